package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.figure.PlacedFigure;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds figures that stand where none is drawn: in lists, and outside the handbook. */
final class FigureOutOfPlace implements Rule {
  private static final Fault FAULT =
      new Fault("figure-out-of-place", Severity.ERROR, "a figure stands where none is drawn");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.figures().stream()
        .filter(placed -> placed.place() == PlacedFigure.Place.ELSEWHERE)
        .filter(placed -> placed.name().isPresent())
        .map(
            placed ->
                FAULT
                    .at(
                        placed.figure().at(),
                        "figure '%s' stands where none is drawn".formatted(placed.figure().name()))
                    .help("put it between two paragraphs of a handbook page, not in a list"))
        .toList();
  }
}
