package stackside.derive.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the next issue does with every card, each for itself: the trouble of one never blocks
 * another. Whatever takes a card down acts unsigned; whatever puts one up is signed.
 *
 * @param stops what must not be used from this issue on, in so far as it is new
 */
public record Issue(Books before, LocalDate on, List<Decision> decisions, List<Stop> stops) {
  /** Why a card comes down that the content does not make any more. */
  public static final String NO_SUCH_CARD = "the content has no such card any more";

  public Issue {
    decisions = List.copyOf(decisions);
    stops = List.copyOf(stops);
  }

  /** What is done with every card. */
  public static Issue of(Books before, LocalDate on, Found found) {
    return new Deciding(before, on, found).issue();
  }

  /** The cards that this issue changes, as it leaves them. */
  public List<CardEntry> changed() {
    return decisions.stream()
        .filter(Decision::changes)
        .flatMap(decision -> decision.entry().stream())
        .toList();
  }

  /**
   * The editions that the cards made now bear.
   *
   * @param waiting the cards that would say something else if that were approved
   * @param alarms what records show that speaks against a card in use
   */
  public Editions editions(Register after, Set<String> waiting, SortedMap<String, String> alarms) {
    SortedMap<String, Editions.Edition> editions = new TreeMap<>();
    for (Decision decision : decisions) {
      decision
          .entry()
          .ifPresent(
              card ->
                  editions.put(
                      card.name(),
                      new Editions.Edition(
                          String.valueOf(card.edition()),
                          card.since(),
                          card.review(),
                          card.approval())));
    }
    return new Editions(editions, after, waiting, alarms);
  }

  /** One run through all cards. */
  private static final class Deciding {
    private final Books before;
    private final Map<String, CardEntry> last;
    private final SortedMap<String, Stop> stops;
    private final List<Stop> fresh = new ArrayList<>();
    private final LocalDate on;
    private final Found found;
    private final Set<String> made = new TreeSet<>();
    private final Map<String, Integer> given;

    Deciding(Books before, LocalDate on, Found found) {
      this.before = before;
      this.last = before.register().cards();
      this.stops = new TreeMap<>(before.register().stops());
      this.on = on;
      this.found = found;
      this.given = before.editionsGiven();
      found.bad().forEach(this::stop);
      found.candidates().forEach(candidate -> made.add(candidate.name()));
    }

    /** A bad record stops its generator until somebody lifts that, even if a good one follows. */
    private void stop(String asset, String why) {
      String what = Stop.asset(asset);
      if (!stops.containsKey(what)) {
        Stop stop = new Stop(what, why, Optional.empty(), on);
        stops.put(what, stop);
        fresh.add(stop);
      }
    }

    Issue issue() {
      List<Decision> decisions = new ArrayList<>();
      found.candidates().forEach(candidate -> decisions.add(decide(candidate)));
      last.values().stream()
          .filter(card -> !made.contains(card.name()))
          .forEach(card -> decisions.add(gone(card)));
      return new Issue(before, on, decisions, fresh);
    }

    private Decision decide(Candidate now) {
      Optional<CardEntry> hanging = Optional.ofNullable(last.get(now.name()));
      Optional<String> stopped = stopped(now);
      if (stopped.isPresent()) {
        return hanging
            .map(card -> down(card, stopped.get()))
            .orElseGet(() -> notYet(now, stopped.get()));
      }
      Optional<CardEntry> unasked =
          hanging
              .filter(card -> card.reason().equals(notInUse(card.asset())))
              .filter(card -> !before.signedSince(card));
      if (unasked.isPresent()) {
        return down(unasked.get(), unasked.get().reason());
      }
      if (now.clean()) {
        return issued(now, hanging);
      }
      if (hanging.isEmpty()) {
        return notYet(now, now.reason());
      }
      if (!hanging.get().current()) {
        return down(hanging.get(), hanging.get().reason());
      }
      boolean hangingOneIsWrong =
          !now.errors().isEmpty() && hanging.get().fingerprint().equals(now.fingerprint());
      return hangingOneIsWrong
          ? down(hanging.get(), now.reason())
          : new Decision(now.name(), Decision.Outcome.STAYS, hanging, now.reason());
    }

    /** Why a card must not hang, whoever has signed it. */
    private Optional<String> stopped(Candidate now) {
      if (!isInUse(now.asset())) {
        return Optional.of(notInUse(now.asset()));
      }
      return stops.values().stream()
          .filter(
              stop ->
                  stop.isAboutAsset(now.asset())
                      || stop.isAboutCard(now.name())
                      || replacesAStopped(now, stop))
          .map(Stop::why)
          .findFirst()
          .or(() -> now.stops().stream().findFirst());
    }

    /** A card that was withdrawn does not come back under another name. */
    private boolean replacesAStopped(Candidate now, Stop stop) {
      return !last.containsKey(now.name())
          && stop.card()
              .filter(name -> !made.contains(name))
              .map(last::get)
              .filter(card -> card.asset().equals(now.asset()))
              .isPresent();
    }

    private boolean isInUse(String asset) {
      return found.inUse().map(numbers -> numbers.contains(asset)).orElse(true);
    }

    private static String notInUse(String asset) {
      return "generator " + asset + " is not in use";
    }

    private static Decision notYet(Candidate now, String reason) {
      return new Decision(now.name(), Decision.Outcome.NOT_YET, Optional.empty(), reason);
    }

    private Decision issued(Candidate now, Optional<CardEntry> hanging) {
      int given = this.given.getOrDefault(now.name(), 0);
      boolean same =
          hanging
              .filter(CardEntry::current)
              .filter(card -> card.fingerprint().equals(now.fingerprint()))
              .filter(card -> card.review().equals(now.review()))
              .filter(card -> card.edition() == given)
              .isPresent();
      if (same) {
        return new Decision(
            now.name(), Decision.Outcome.SAME_EDITION, hanging, "it says what it said before");
      }
      String reason = reason(now, hanging, given);
      CardEntry entry =
          new CardEntry(
              now.name(),
              now.code(),
              now.title(),
              now.room(),
              now.asset(),
              now.path(),
              now.copies(),
              given + 1,
              now.fingerprint(),
              on,
              now.review(),
              now.approval(),
              CardEntry.State.CURRENT,
              reason);
      return new Decision(now.name(), Decision.Outcome.NEXT_EDITION, Optional.of(entry), reason);
    }

    private static String reason(Candidate now, Optional<CardEntry> hanging, int given) {
      if (hanging.isEmpty()) {
        return given == 0
            ? "first edition"
            : "an issue that was begun and lost had made it already";
      }
      if (!hanging.get().current()) {
        return "it is in use again";
      }
      if (!hanging.get().fingerprint().equals(now.fingerprint())) {
        return now.changed();
      }
      return hanging.get().review().equals(now.review())
          ? "an issue that was begun and lost had given it another edition"
          : "it was reviewed, and bears another review date";
    }

    /** A generator that is gone takes its cards along at once; any other change waits. */
    private Decision gone(CardEntry card) {
      if (!card.current()) {
        return down(card, card.reason());
      }
      Optional<Stop> stop = stops.values().stream().filter(each -> each.isAbout(card)).findFirst();
      if (stop.isPresent()) {
        return down(card, stop.get().why());
      }
      if (!isInUse(card.asset())) {
        return down(card, notInUse(card.asset()));
      }
      return found
          .uncertain()
          .or(() -> Optional.ofNullable(found.waiting().get("room:" + card.room())))
          .or(() -> Optional.ofNullable(found.waiting().get("asset:" + card.asset())))
          .map(why -> new Decision(card.name(), Decision.Outcome.STAYS, Optional.of(card), why))
          .orElseGet(() -> down(card, NO_SUCH_CARD));
    }

    private static Decision down(CardEntry card, String reason) {
      return card.current()
          ? new Decision(
              card.name(), Decision.Outcome.OUT_OF_USE, Optional.of(card.outOfUse(reason)), reason)
          : new Decision(
              card.name(), Decision.Outcome.STAYS_DOWN, Optional.of(card), card.reason());
    }
  }
}
