package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.OutputCheckPolicy;
import stackside.model.ReadingDistance;
import stackside.model.UnitDetails;
import stackside.quantity.Months;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds values in the unit file that would switch a check off: intervals, tolerances, reading
 * distances.
 */
final class PolicyImplausible implements Rule {
  private static final Fault FAULT =
      new Fault(
          "policy-implausible",
          Severity.ERROR,
          "a distance, an interval or a tolerance cannot be meant");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double LONGEST_MONTHS = 60;
  private static final double WHOLE = 100;

  /** Standing at the stack, at arm's length: common practice, no source. */
  private static final double NEAREST_MM = 500;

  /** From the other side of the patient: common practice, no source. */
  private static final double LEAST_FAR_MM = 1_000;

  private static final double FARTHEST_MM = 5_000;

  @Override
  public List<Problem> problems(Analysis analysis) {
    UnitDetails details = analysis.unit().details();
    List<Problem> found = new ArrayList<>();
    details.reviewAfter().values().forEach(every -> interval(every, found));
    policy(details.outputCheck(), found);
    distance(details.readingDistance(), found);
    return found;
  }

  private static void interval(Fact<Months> every, List<Problem> found) {
    double months = every.value().value();
    if (months < 1 || months > LONGEST_MONTHS) {
      found.add(
          FAULT
              .at(
                  every.at(),
                  "an interval of %s is %s"
                      .formatted(
                          every.value().text(),
                          months < 1 ? "shorter than a month" : "longer than five years"))
              .help("look for a digit too many or too few"));
    }
  }

  private static void policy(OutputCheckPolicy policy, List<Problem> found) {
    interval(policy.every(), found);
    if (policy.tolerance().value().value() >= WHOLE) {
      found.add(
          FAULT
              .at(
                  policy.tolerance().at(),
                  "a tolerance of %s lets a machine without any output pass"
                      .formatted(policy.tolerance().value().text()))
              .help("look for a digit too many"));
    }
    if (policy.above().value().share().value() >= WHOLE) {
      found.add(
          FAULT
              .at(
                  policy.above().at(),
                  "no output lies above %s".formatted(policy.above().value().text()))
              .help("look for a digit too many"));
    }
  }

  private static void distance(ReadingDistance distance, List<Problem> found) {
    double near = distance.near().value().value();
    double far = distance.far().value().value();
    if (near >= far) {
      found.add(
          FAULT
              .at(distance.near().at(), "the near distance is not nearer than the far one")
              .note(distance.far().at(), "the far distance")
              .help("correct one of the two"));
    } else if (near < NEAREST_MM) {
      found.add(
          tooNear(
              distance.near().at(),
              "a card on the stack is not read from as near as " + distance.near().value().text()));
    } else if (far < LEAST_FAR_MM) {
      found.add(
          tooNear(
              distance.far().at(),
              "%s is no far distance: who stands across the patient reads the card from farther"
                  .formatted(distance.far().value().text())));
    } else if (far > FARTHEST_MM) {
      found.add(outOfReach(distance.far().at(), distance.far().value().text()));
    }
  }

  private static Problem tooNear(Location at, String message) {
    return FAULT
        .at(at, message)
        .help("measure from the eye to the card; letters sized for a nearer eye are too small");
  }

  private static Problem outOfReach(Location at, String text) {
    return FAULT
        .at(at, "nobody reads a card from " + text)
        .help("look for a digit too many or too few");
  }
}
