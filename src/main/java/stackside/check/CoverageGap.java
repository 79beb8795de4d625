package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.coverage.Cell;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds what a room offers and a machine in it has no answer for. A gap beside a doubled answer
 * that one changed word would put there is left to {@link AmbiguousAnswer}: it is the same mistake.
 */
final class CoverageGap implements Rule {
  private static final Fault FAULT =
      new Fault("coverage-gap", Severity.ERROR, "a room offers something that has no answer");

  /** One lesion and step, with all machines, places and rooms where it has no answer. */
  private record Hole(List<Cell> cells) {
    Cell first() {
      return cells.get(0);
    }

    List<Room> rooms() {
      return cells.stream().map(Cell::room).distinct().toList();
    }

    List<Site> sites() {
      return cells.stream().map(Cell::site).distinct().toList();
    }

    /** Whether the lesion has an answer at some other site of the same offer. */
    boolean isPartOfOffer() {
      return sites().size() < first().offer().allSites().size();
    }

    String question() {
      return "%s (%s)"
          .formatted(Wording.quoted(first().lesion()), Wording.small(first().step().title()));
    }
  }

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Hole> holes =
        gaps(analysis).stream()
            .collect(
                Collectors.groupingBy(
                    CoverageGap::question, LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(Hole::new)
            .toList();
    Stream<Problem> single =
        holes.stream().filter(hole -> !hole.isPartOfOffer()).map(hole -> problem(unit, hole));
    Stream<Problem> atOnePlace =
        holes.stream()
            .filter(Hole::isPartOfOffer)
            .collect(Collectors.groupingBy(Hole::sites, LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(same -> same.size() == 1 ? problem(unit, same.get(0)) : problem(same));
    return Stream.concat(single, atOnePlace).toList();
  }

  private static List<Cell> gaps(Analysis analysis) {
    List<Profile> doubled =
        analysis.coverage().ambiguous().stream()
            .flatMap(cell -> cell.cover().preferred().stream())
            .distinct()
            .toList();
    return analysis.coverage().gaps().stream()
        .filter(
            gap ->
                doubled.stream()
                    .filter(
                        it -> analysis.unit().machinesIn(gap.room()).contains(it.machine().value()))
                    .noneMatch(it -> gap.missedByOneThing(analysis.unit(), it)))
        .toList();
  }

  private static List<ThingId> question(Cell cell) {
    return List.of(cell.lesion().id(), cell.step().id());
  }

  private static Problem problem(Unit unit, Hole hole) {
    Cell first = hole.first();
    List<Machine> machines = hole.cells().stream().map(Cell::machine).distinct().toList();
    Problem problem =
        FAULT.at(
            offered(first),
            "%s %s no answer for %s %s, which %s"
                .formatted(
                    Wording.quoted(machines),
                    machines.size() == 1 ? "has" : "have",
                    hole.question(),
                    Places.of(unit, hole.cells()),
                    Wording.quoted(hole.rooms())
                        + (hole.rooms().size() == 1 ? " offers" : " offer")));
    for (Profile alternative : first.cover().alternatives()) {
      problem =
          problem.note(alternative.at(), "this is an alternative, and there is nothing to prefer");
    }
    return problem.help(
        "add a profile: settings, cold, or not approved; or take it out of the offer");
  }

  /** Several holes at one place are one: a site was left out of a list or a group. */
  private static Problem problem(List<Hole> same) {
    Cell first = same.get(0).first();
    return FAULT
        .at(
            offered(first),
            "at %s there is no answer to %s questions that rooms offer; the first is %s on %s"
                .formatted(
                    Wording.quoted(same.get(0).sites()),
                    same.size(),
                    same.get(0).question(),
                    Wording.quoted(first.machine())))
        .note(same.get(0).sites().get(0).at(), "the site")
        .help("put the site into the lists or the group it was left out of");
  }

  private static Location offered(Cell cell) {
    return cell.offer().lesions().stream()
        .filter(it -> it.value().id().equals(cell.lesion().id()))
        .findFirst()
        .orElseThrow()
        .at();
  }
}
