package stackside.derive.signed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Two copies of one ledger in which people signed at the same time, made one again. An older
 * decision must not become the latest by being appended later, so the copies are joined only where
 * they decided about different things or in different roles, and where one of them at most was
 * issued or withdrawn from.
 *
 * @param joined absent where they cannot be joined
 * @param added how many lines of the other copy are new
 * @param again the lines of the other copy that somebody has to sign again
 * @param apart whether both copies were issued or withdrawn from
 */
public record Merge(Optional<Ledger> joined, int added, List<Again> again, boolean apart) {
  public Merge {
    again = List.copyOf(again);
  }

  /**
   * A decision that is signed again after the merge, and the line of the other copy it stands in.
   */
  public record Again(int line, Ledger.Decision decision) {}

  /** Joins two copies; both must be whole. */
  public static Merge of(Ledger ours, Ledger theirs) {
    int common = 0;
    while (common < Math.min(ours.lines().size(), theirs.lines().size())
        && ours.lines().get(common).seal().equals(theirs.lines().get(common).seal())) {
      common++;
    }
    List<Ledger.Entry> own = tail(ours, common);
    List<Ledger.Entry> other = tail(theirs, common);
    if (lastAct(own).isPresent() && lastAct(other).isPresent()) {
      return new Merge(Optional.empty(), 0, List.of(), true);
    }
    boolean otherLeads = lastAct(other).isPresent();
    List<Ledger.Entry> leading = otherLeads ? other : own;
    List<Ledger.Entry> following = otherLeads ? own : other;
    List<Again> again = new ArrayList<>();
    List<Ledger.Entry> fresh = new ArrayList<>();
    for (int i = 0; i < following.size(); i++) {
      Ledger.Decision decision = (Ledger.Decision) following.get(i);
      if (leading.contains(decision)) {
        continue;
      }
      if (isDecided(leading, decision) || isBeforeAct(leading, decision)) {
        again.add(new Again(line(theirs, otherLeads, common, i, other, decision), decision));
      }
      fresh.add(decision);
    }
    if (!again.isEmpty()) {
      return new Merge(Optional.empty(), 0, again, false);
    }
    int added = otherLeads ? other.size() : fresh.size();
    return new Merge(Optional.of(joined(ours, common, leading, fresh)), added, List.of(), false);
  }

  private static List<Ledger.Entry> tail(Ledger ledger, int from) {
    return ledger.lines().subList(from, ledger.lines().size()).stream()
        .map(Ledger.Line::entry)
        .toList();
  }

  /** The line to name is one of the other copy: its own, or the one that decided the same. */
  private static int line(
      Ledger theirs,
      boolean otherLeads,
      int common,
      int at,
      List<Ledger.Entry> other,
      Ledger.Decision decision) {
    if (!otherLeads) {
      return common + at + 2;
    }
    for (int i = 0; i < other.size(); i++) {
      if (other.get(i) instanceof Ledger.Decision each && isSamePair(each, decision)) {
        return common + i + 2;
      }
    }
    return theirs.lines().size() + 1;
  }

  private static Optional<LocalDate> lastAct(List<Ledger.Entry> entries) {
    return entries.stream()
        .filter(Ledger.Act.class::isInstance)
        .map(Ledger.Entry::day)
        .reduce((earlier, later) -> later);
  }

  private static boolean isDecided(List<Ledger.Entry> leading, Ledger.Decision decision) {
    return leading.stream()
        .anyMatch(each -> each instanceof Ledger.Decision other && isSamePair(other, decision));
  }

  private static boolean isSamePair(Ledger.Decision one, Ledger.Decision other) {
    return one.thing().equals(other.thing()) && one.role().equals(other.role());
  }

  /** What was signed before an issue that did not know of it cannot be put before it any more. */
  private static boolean isBeforeAct(List<Ledger.Entry> leading, Ledger.Decision decision) {
    return lastAct(leading).filter(decision.day()::isBefore).isPresent();
  }

  /** Up to the last act nothing moves, for the register names those seals; then by day. */
  private static Ledger joined(
      Ledger ours, int common, List<Ledger.Entry> leading, List<Ledger.Entry> fresh) {
    Ledger ledger = new Ledger(ours.lines().subList(0, common));
    int fixed = 0;
    for (int i = 0; i < leading.size(); i++) {
      fixed = leading.get(i) instanceof Ledger.Act ? i + 1 : fixed;
    }
    List<Ledger.Entry> rest = new ArrayList<>(leading.subList(fixed, leading.size()));
    rest.addAll(fresh);
    rest.sort(Comparator.comparing(Ledger.Entry::day));
    for (Ledger.Entry entry : leading.subList(0, fixed)) {
      ledger = ledger.with(entry);
    }
    for (Ledger.Entry entry : rest) {
      ledger = ledger.with(entry);
    }
    return ledger;
  }
}
