package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.figure.FigureName;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds figures that the program does not know how to draw. */
final class FigureUnknown implements Rule {
  private static final Fault FAULT =
      new Fault("figure-unknown", Severity.ERROR, "a text asks for a figure that nobody draws");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.figures().stream()
        .filter(placed -> placed.name().isEmpty())
        .map(
            placed ->
                FAULT
                    .at(
                        placed.figure().at(),
                        "there is no figure '%s'".formatted(placed.figure().name()))
                    .help("write one of " + Wording.list(FigureName.words())))
        .toList();
  }
}
