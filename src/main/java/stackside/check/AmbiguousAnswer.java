package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.coverage.Cell;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds questions with two preferred answers on one machine. */
final class AmbiguousAnswer implements Rule {
  private static final Fault FAULT =
      new Fault("ambiguous-answer", Severity.ERROR, "two preferred answers hold at once");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.coverage().ambiguous().stream()
        .collect(
            Collectors.groupingBy(
                cell -> cell.cover().preferred().stream().map(Profile::id).toList(),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .stream()
        .map(cells -> problem(analysis, cells))
        .toList();
  }

  private static Problem problem(Analysis analysis, List<Cell> cells) {
    Cell cell = cells.get(0);
    List<Profile> preferred = cell.cover().preferred();
    Profile first = preferred.get(0);
    Profile last = preferred.get(preferred.size() - 1);
    Problem problem =
        FAULT
            .at(
                last.at(),
                "profile '%s' answers the same as '%s': %s (%s) %s"
                    .formatted(
                        last.id().slug(),
                        first.id().slug(),
                        Wording.quoted(cells.stream().map(Cell::lesion).toList()),
                        Wording.small(cell.step().title()),
                        Places.of(analysis.unit(), cells)))
            .note(first.at(), "the other preferred answer");
    Optional<Cell> gap = gapBeside(analysis, cell);
    return gap.map(it -> problem.note(it.offer().at(), "and nothing answers " + words(it)))
        .orElse(problem)
        .help(
            gap.isPresent()
                ? "correct the lesion, site, step or patients of the one that was meant for it"
                : "take the overlap out of one, or make it an 'alternative' that says when");
  }

  private static String words(Cell gap) {
    return "%s (%s) at %s for %s on %s"
        .formatted(
            Wording.quoted(gap.lesion()),
            Wording.small(gap.step().title()),
            Wording.quoted(gap.site()),
            Wording.small(gap.patients().title()),
            Wording.quoted(gap.machine()));
  }

  private static Optional<Cell> gapBeside(Analysis analysis, Cell cell) {
    return analysis.coverage().gaps().stream()
        .filter(gap -> analysis.unit().machinesIn(gap.room()).contains(cell.machine()))
        .filter(
            gap ->
                cell.cover().preferred().stream()
                    .anyMatch(it -> gap.missedByOneThing(analysis.unit(), it)))
        .findFirst();
  }
}
