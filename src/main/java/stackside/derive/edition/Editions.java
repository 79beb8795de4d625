package stackside.derive.edition;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The edition that each card bears, by the card's name. Issued cards bear whole editions; a draft
 * bears the last issued one with a decimal.
 */
public record Editions(SortedMap<String, Edition> byCard, Register register) {

  public Editions {
    byCard = Collections.unmodifiableSortedMap(new TreeMap<>(byCard));
  }

  /** The words of an edition, and the day from which it holds. */
  public record Edition(String words, LocalDate since, Optional<LocalDate> review) {}

  /** Nothing was issued before. */
  public static Editions none() {
    return new Editions(Collections.emptySortedMap(), Register.none());
  }

  /** Drafts made on a day, after what a register holds; they tell nothing of what hangs. */
  public static Editions drafts(Register register, LocalDate on) {
    SortedMap<String, Edition> drafts = new TreeMap<>();
    register
        .cards()
        .forEach(
            (name, card) ->
                drafts.put(name, new Edition(card.edition() + ".1", on, Optional.empty())));
    return new Editions(drafts, Register.none());
  }

  /** The edition of a card; a card that was never issued is a draft before the first. */
  public Edition of(String card, LocalDate on) {
    return byCard.getOrDefault(card, new Edition("0.1", on, Optional.empty()));
  }
}
