package stackside.derive.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.derive.signed.Fingerprint;
import stackside.source.SheetRow;

/**
 * What the next issue does with every card, each for itself: the trouble of one never blocks
 * another.
 */
public record Issue(Register before, LocalDate on, List<Decision> decisions) {

  /** Why a card comes down that the content does not make any more. */
  public static final String NO_SUCH_CARD = "the content has no such card any more";

  public Issue {
    decisions = List.copyOf(decisions);
  }

  public static Issue of(Register before, LocalDate on, List<Candidate> candidates) {
    return of(before, on, candidates, Optional.empty());
  }

  /**
   * What is done with every card.
   *
   * @param unread why not all of the content could be read, if so; then a card that it does not
   *     seem to have any more is not known to be gone
   */
  public static Issue of(
      Register before, LocalDate on, List<Candidate> candidates, Optional<String> unread) {
    List<Decision> decisions = new ArrayList<>();
    Set<String> known = new TreeSet<>();
    for (Candidate candidate : candidates) {
      known.add(candidate.name());
      decisions.add(decide(candidate, before.card(candidate.name()), on));
    }
    before.cards().values().stream()
        .filter(card -> !known.contains(card.name()))
        .forEach(card -> decisions.add(gone(card, unread)));
    return new Issue(before, on, decisions);
  }

  private static Decision decide(Candidate now, Optional<CardEntry> last, LocalDate on) {
    if (now.clean()) {
      return issued(now, last, on);
    }
    if (last.isEmpty()) {
      return new Decision(now.name(), Decision.Outcome.NOT_YET, Optional.empty(), now.reason());
    }
    if (!last.get().current()) {
      return new Decision(now.name(), Decision.Outcome.STAYS_DOWN, last, last.get().reason());
    }
    boolean hangingOneIsWrong =
        !now.errors().isEmpty() && last.get().fingerprint().equals(now.fingerprint());
    return hangingOneIsWrong
        ? down(last.get(), now.reason())
        : new Decision(now.name(), Decision.Outcome.STAYS, last, now.reason());
  }

  private static Decision issued(Candidate now, Optional<CardEntry> last, LocalDate on) {
    boolean same =
        last.filter(CardEntry::current)
            .filter(card -> card.fingerprint().equals(now.fingerprint()))
            .filter(card -> card.review().equals(now.review()))
            .isPresent();
    if (same) {
      return new Decision(
          now.name(), Decision.Outcome.SAME_EDITION, last, "it says what it said before");
    }
    String reason =
        last.isEmpty()
            ? "first edition"
            : last.get().current() ? changed(now, last.get()) : "it is in use again";
    CardEntry entry =
        new CardEntry(
            now.name(),
            now.code(),
            now.title(),
            now.asset(),
            now.path(),
            now.copies(),
            last.map(CardEntry::edition).orElse(0) + 1,
            now.fingerprint(),
            on,
            now.review(),
            CardEntry.State.CURRENT,
            reason);
    return new Decision(now.name(), Decision.Outcome.NEXT_EDITION, Optional.of(entry), reason);
  }

  private static String changed(Candidate now, CardEntry last) {
    return last.fingerprint().equals(now.fingerprint())
        ? "it was reviewed, and bears another review date"
        : now.changed();
  }

  private static Decision gone(CardEntry card, Optional<String> unread) {
    if (!card.current()) {
      return new Decision(
          card.name(), Decision.Outcome.STAYS_DOWN, Optional.of(card), card.reason());
    }
    return unread
        .map(why -> new Decision(card.name(), Decision.Outcome.STAYS, Optional.of(card), why))
        .orElseGet(() -> down(card, NO_SUCH_CARD));
  }

  private static Decision down(CardEntry card, String reason) {
    CardEntry entry = card.outOfUse(reason);
    return new Decision(card.name(), Decision.Outcome.OUT_OF_USE, Optional.of(entry), reason);
  }

  /**
   * The register after this issue, which it remembers even if it changed no card.
   *
   * @param records the rows of measurement and service that the issue could rest on
   */
  public Register register(Optional<Fingerprint> ledger, List<SheetRow> records) {
    List<CardEntry> changed =
        decisions.stream()
            .filter(Decision::changes)
            .flatMap(decision -> decision.entry().stream())
            .toList();
    return before.with(on, Optional.empty(), ledger, changed, Records.toKeep(before, records));
  }

  /** The editions that the cards made now bear. */
  public Editions editions(Register after) {
    SortedMap<String, Editions.Edition> editions = new TreeMap<>();
    for (Decision decision : decisions) {
      decision
          .entry()
          .ifPresent(
              card ->
                  editions.put(
                      card.name(),
                      new Editions.Edition(
                          String.valueOf(card.edition()), card.since(), card.review())));
    }
    return new Editions(editions, after);
  }
}
