package stackside.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import stackside.derive.signed.Subjects;
import stackside.derive.standing.GoneStanding;
import stackside.derive.standing.Standing;
import stackside.model.AssetStatus;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** All that keeps single cards from being issued, and how far each of it reaches. */
final class Troubles {
  private static final String NOT_FIT = "asset-not-fit-for-use";

  private final CheckedContent judged;
  private final Unit unit;
  private final List<Trouble> troubles = new ArrayList<>();
  private final Set<ThingId> wrong = new TreeSet<>();
  private final SortedMap<ThingId, List<String>> unsettled = new TreeMap<>();

  /** One thing that is wrong or in doubt. */
  private record Trouble(String words, boolean doubt, ErrorScope reach) {}

  private Troubles(CheckedContent judged, Unit unit, Standing standing) {
    this.judged = judged;
    this.unit = unit;
    Subjects subjects = Subjects.of(unit);
    for (Problem problem : judged.problems()) {
      if (problem.severity() == Severity.ERROR && !isNotFit(problem)) {
        troubles.add(trouble(problem, subjects, ErrorScope.isDoubt(problem)));
        subjects.at(problem.at()).ifPresent(wrong::add);
      } else if (Unanswered.mayHurt(problem)) {
        troubles.add(trouble(problem, subjects, true));
      }
    }
    standing
        .gone()
        .forEach(gone -> reach(gone).ifPresent(reach -> troubles.add(waits(gone, reach))));
    judged
        .matters()
        .forEach(
            matter ->
                unsettled
                    .computeIfAbsent(matter.about(), any -> new ArrayList<>())
                    .add(matter.about() + ": " + matter.words()));
  }

  static Troubles of(CheckedContent judged) {
    return new Troubles(
        judged, judged.analysis().orElseThrow().unit(), judged.standing().orElseThrow());
  }

  /** A generator that is not in use comes down by itself; its fellows in the room have no part. */
  private static boolean isNotFit(Problem problem) {
    return problem.fault().id().equals(NOT_FIT);
  }

  private Trouble trouble(Problem problem, Subjects subjects, boolean doubt) {
    return new Trouble(
        problem.at() + ": " + problem.message(),
        doubt,
        ErrorScope.of(problem, unit, subjects, judged.sources()));
  }

  private static Trouble waits(GoneStanding gone, ErrorScope reach) {
    return new Trouble(words(gone), true, reach);
  }

  private static String words(GoneStanding gone) {
    return gone.thing() + " is gone from the content, and not all have agreed to that";
  }

  /** The cards that may have shown what is gone. */
  private static Optional<ErrorScope> reach(GoneStanding gone) {
    return switch (gone.kind()) {
      case DRILL, CHECKLIST -> Optional.of(new ErrorScope.OneFace(Face.SET_UP));
      case PROFILE ->
          gone.facts()
              .flatMap(facts -> facts.text("machine"))
              .flatMap(machine -> ThingId.parse(Kind.MACHINE.word() + ":" + machine))
              .map(machine -> new ErrorScope.CardsOf(Set.of(machine)));
      case MACHINE, ROOM, ASSET, SOURCES, POLICIES -> Optional.empty();
    };
  }

  /** The errors for which nothing at all can be issued, if there are any. */
  static List<Problem> blocking(CheckedContent judged, Unit unit) {
    Subjects subjects = Subjects.of(unit);
    return judged
        .errors()
        .filter(
            each ->
                ErrorScope.of(each, unit, subjects, judged.sources())
                    instanceof ErrorScope.Everything)
        .toList();
  }

  /** What is wrong in itself. */
  Set<ThingId> wrong() {
    return Collections.unmodifiableSet(wrong);
  }

  /** What is not signed, read back or measured. */
  SortedMap<ThingId, List<String>> unsettled() {
    return Collections.unmodifiableSortedMap(unsettled);
  }

  /** What is known to be wrong with a card. */
  List<String> errors(CardPlan plan, Set<ThingId> things) {
    return touching(plan, things).filter(each -> !each.doubt()).map(Trouble::words).toList();
  }

  /** What must be settled before a card can be made. */
  List<String> open(CardPlan plan, Set<ThingId> things) {
    return Stream.concat(
            touching(plan, things).filter(Trouble::doubt).map(Trouble::words),
            things.stream().flatMap(thing -> unsettled.getOrDefault(thing, List.of()).stream()))
        .toList();
  }

  private Stream<Trouble> touching(CardPlan plan, Set<ThingId> things) {
    return troubles.stream().filter(trouble -> trouble.reach().touches(plan, things));
  }

  /** Why a card that is not made now need not be gone from the content. */
  Optional<String> uncertain() {
    return judged
        .errors()
        .filter(ErrorScope::isUnread)
        .map(
            problem ->
                "not all of the content can be read: " + problem.at() + ": " + problem.message())
        .findFirst()
        .or(
            () ->
                judged.standing().stream()
                    .flatMap(standing -> standing.gone().stream())
                    .map(Troubles::words)
                    .findFirst());
  }

  /** The generators that may be used, those that cannot be linked among them. */
  Optional<Set<String>> inUse() {
    boolean unread =
        judged
            .errors()
            .filter(ErrorScope::isUnread)
            .map(Problem::at)
            .map(Location::file)
            .anyMatch("assets.csv"::equals);
    if (unread) {
      return Optional.empty();
    }
    Set<String> numbers = new TreeSet<>();
    unit.assets().stream()
        .filter(asset -> isFit(asset.status().value()))
        .forEach(asset -> numbers.add(asset.id().slug()));
    unit.broken().stream()
        .filter(broken -> broken.id().kind() == Kind.ASSET)
        .forEach(broken -> numbers.add(broken.id().slug()));
    return Optional.of(numbers);
  }

  private static boolean isFit(AssetStatus status) {
    return switch (status) {
      case IN_USE, ON_LOAN, MOBILE -> true;
      case SPARE, QUARANTINED -> false;
    };
  }
}
