package stackside.derive.edition;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The edition that each card bears, by the card's name. Issued cards bear whole editions; a draft
 * bears the last issued one with a decimal.
 *
 * @param waiting the cards that would say something else if that were approved
 * @param alarms what records show that speaks against a card in use, by the card's name
 */
public record Editions(
    SortedMap<String, Edition> byCard,
    Register register,
    Set<String> waiting,
    SortedMap<String, String> alarms) {

  public Editions {
    byCard = Collections.unmodifiableSortedMap(new TreeMap<>(byCard));
    waiting = Collections.unmodifiableSortedSet(new TreeSet<>(waiting));
    alarms = Collections.unmodifiableSortedMap(new TreeMap<>(alarms));
  }

  public Editions(SortedMap<String, Edition> byCard, Register register) {
    this(byCard, register, Set.of(), Collections.emptySortedMap());
  }

  /** The words of an edition, the day from which it holds, and who agreed to it. */
  public record Edition(
      String words, LocalDate since, Optional<LocalDate> review, Optional<Approval> approval) {

    private static Edition draft(String words, LocalDate on) {
      return new Edition(words, on, Optional.empty(), Optional.empty());
    }
  }

  /** Nothing was issued before. */
  public static Editions none() {
    return new Editions(Collections.emptySortedMap(), Register.none());
  }

  /** Drafts made on a day, after what a register holds; they tell nothing of what hangs. */
  public static Editions drafts(Register register, LocalDate on) {
    SortedMap<String, Edition> drafts = new TreeMap<>();
    register
        .cards()
        .forEach((name, card) -> drafts.put(name, Edition.draft(card.edition() + ".1", on)));
    return new Editions(drafts, Register.none());
  }

  /** The edition of a card; a card that was never issued is a draft before the first. */
  public Edition of(String card, LocalDate on) {
    return byCard.getOrDefault(card, Edition.draft("0.1", on));
  }
}
