package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.OutputCheckPolicy;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about output checks that forgive more than the standard for the machines lets their makers.
 */
final class ToleranceWiderThanStandard implements Rule {
  private static final Fault FAULT =
      new Fault(
          "tolerance-wider-than-standard",
          Severity.WARNING,
          "output checks forgive more than the standard does");

  /** Percent of the published output: GOST R IEC 60601-2-2-2006, 6.3 aa). */
  private static final double TOLERANCE = 20;

  /** Percent of rated power: IEC 60601-2-2, 201.12.1.101, from memory. */
  private static final double ABOVE = 10;

  /** A hundred percent and more is a digit too many, and another rule's. */
  private static final double WHOLE = 100;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    OutputCheckPolicy policy = analysis.unit().details().outputCheck();
    List<Problem> found = new ArrayList<>();
    if (isWider(policy.tolerance().value().value(), TOLERANCE)) {
      found.add(
          FAULT
              .at(
                  policy.tolerance().at(),
                  "a tolerance of %s is wider than the 20 percent of IEC 60601-2-2"
                      .formatted(policy.tolerance().value().text()))
              .help("look for a mistyped digit, or ask medical physics whether it is meant"));
    }
    if (isWider(policy.above().value().share().value(), ABOVE)) {
      found.add(
          FAULT
              .at(
                  policy.above().at(),
                  "outputs up to %s are not judged, and IEC 60601-2-2 judges from 10 percent"
                      .formatted(policy.above().value().text()))
              .help("look for a mistyped digit, or ask medical physics whether it is meant"));
    }
    return found;
  }

  private static boolean isWider(double percent, double most) {
    return percent > most && percent < WHOLE;
  }
}
