package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.coverage.Cell;
import stackside.model.Profile;
import stackside.model.Room;
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

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Profile> doubled =
        analysis.coverage().ambiguous().stream()
            .flatMap(cell -> cell.cover().preferred().stream())
            .distinct()
            .toList();
    return analysis.coverage().gaps().stream()
        .filter(
            gap ->
                doubled.stream()
                    .filter(it -> it.machine().value().id().equals(gap.machine().id()))
                    .noneMatch(it -> gap.missedByOneThing(analysis.unit(), it)))
        .collect(
            Collectors.groupingBy(CoverageGap::question, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(cells -> problem(analysis.unit(), cells))
        .toList();
  }

  private static List<ThingId> question(Cell cell) {
    return List.of(cell.machine().id(), cell.lesion().id(), cell.step().id());
  }

  private static Problem problem(Unit unit, List<Cell> cells) {
    Cell first = cells.get(0);
    List<Room> rooms = cells.stream().map(Cell::room).distinct().toList();
    String message =
        "%s has no answer for %s, %s, %s, which %s"
            .formatted(
                Wording.quoted(first.machine()),
                Wording.quoted(first.lesion()),
                Wording.small(first.step().title()),
                Places.of(unit, cells),
                Wording.quoted(rooms) + (rooms.size() == 1 ? " offers" : " offer"));
    Problem problem = FAULT.at(offered(first), message);
    for (Profile alternative : first.cover().alternatives()) {
      problem =
          problem.note(alternative.at(), "this is an alternative, and there is nothing to prefer");
    }
    return problem.help(
        "add a profile: settings, cold, or not approved; or take it out of the offer");
  }

  private static Location offered(Cell cell) {
    return cell.offer().lesions().stream()
        .filter(it -> it.value().id().equals(cell.lesion().id()))
        .findFirst()
        .orElseThrow()
        .at();
  }
}
