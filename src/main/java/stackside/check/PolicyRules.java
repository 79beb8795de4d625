package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.OutputCheckPolicy;
import stackside.model.ReadingDistance;
import stackside.model.SignedKind;
import stackside.model.UnitDetails;
import stackside.model.UnitStatus;
import stackside.quantity.Months;
import stackside.source.Location;

/** The unit's own policies: intervals, tolerances, distances, signatures. */
final class PolicyRules {

  private static final double LONGEST_MONTHS = 60;

  /** A tolerance of a hundred percent and more has a digit too many. */
  private static final double WHOLE = 100;

  /** Standing at the stack, at arm's length: common practice, no source. */
  private static final double NEAREST_MM = 500;

  /** From the other side of the patient: common practice, no source. */
  private static final double LEAST_FAR_MM = 1_000;

  private static final double FARTHEST_MM = 5_000;

  /** Percent of the published output: GOST R IEC 60601-2-2-2006, 6.3 aa). */
  private static final double STANDARD_TOLERANCE = 20;

  /** Percent of rated power: IEC 60601-2-2, 201.12.1.101, from memory. */
  private static final double STANDARD_ABOVE = 10;

  private PolicyRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "policy-implausible",
            "a distance, an interval or a tolerance is implausible",
            PolicyRules::policyImplausible),
        warning(
            "tolerance-wider-than-standard",
            "output checks allow more than the standard does",
            PolicyRules::toleranceWiderThanStandard),
        error(
            "clinical-at-example-address",
            "a clinical unit names an address that is for examples only",
            PolicyRules::clinicalAtExampleAddress),
        error(
            "kind-never-signed",
            "a kind of thing is signed by nobody, or never reviewed",
            PolicyRules::kindNeverSigned));
  }

  private static List<Finding> policyImplausible(CheckedUnit checked) {
    UnitDetails details = checked.unit().details();
    List<Finding> found = new ArrayList<>();
    details.reviewAfter().values().forEach(every -> interval(every, found));
    outputCheckPolicy(details.outputCheck(), found);
    readingDistance(details.readingDistance(), found);
    return found;
  }

  private static void interval(Fact<Months> every, List<Finding> found) {
    double months = every.value().value();
    if (months < 1 || months > LONGEST_MONTHS) {
      found.add(
          Finding.at(
                  every.at(),
                  "an interval of %s is %s"
                      .formatted(
                          every.value().text(),
                          months < 1 ? "shorter than a month" : "longer than five years"))
              .help("check for a digit too many or too few"));
    }
  }

  private static void outputCheckPolicy(OutputCheckPolicy policy, List<Finding> found) {
    interval(policy.every(), found);
    if (policy.tolerance().value().value() >= WHOLE) {
      found.add(
          Finding.at(
                  policy.tolerance().at(),
                  "a tolerance of %s lets a machine without any output pass"
                      .formatted(policy.tolerance().value().text()))
              .help("check for a digit too many"));
    }
    if (policy.above().value().share().value() >= WHOLE) {
      found.add(
          Finding.at(
                  policy.above().at(),
                  "no output is above %s".formatted(policy.above().value().text()))
              .help("check for a digit too many"));
    }
  }

  private static void readingDistance(ReadingDistance distance, List<Finding> found) {
    double near = distance.near().value().value();
    double far = distance.far().value().value();
    if (near >= far) {
      found.add(
          Finding.at(distance.near().at(), "the near distance is not nearer than the far one")
              .note(distance.far().at(), "the far distance")
              .help("correct one of the two"));
    } else if (near < NEAREST_MM) {
      found.add(
          tooNear(
              distance.near().at(),
              "nobody reads a card on the stack from as near as "
                  + distance.near().value().text()));
    } else if (far < LEAST_FAR_MM) {
      found.add(
          tooNear(
              distance.far().at(),
              "%s is too near for the far distance: people across the patient read the card from farther away"
                  .formatted(distance.far().value().text())));
    } else if (far > FARTHEST_MM) {
      found.add(outOfReach(distance.far().at(), distance.far().value().text()));
    }
  }

  private static Finding tooNear(Location at, String message) {
    return Finding.at(at, message)
        .help("measure from the eye to the card; letters sized for a nearer eye are too small");
  }

  private static Finding outOfReach(Location at, String text) {
    return Finding.at(at, "nobody reads a card from " + text)
        .help("check for a digit too many or too few");
  }

  private static List<Finding> toleranceWiderThanStandard(CheckedUnit checked) {
    OutputCheckPolicy policy = checked.unit().details().outputCheck();
    List<Finding> found = new ArrayList<>();
    if (isWider(policy.tolerance().value().value(), STANDARD_TOLERANCE)) {
      found.add(
          Finding.at(
                  policy.tolerance().at(),
                  "a tolerance of %s is wider than the 20 percent of IEC 60601-2-2"
                      .formatted(policy.tolerance().value().text()))
              .help("check for a mistyped digit, or ask medical physics whether this is intended"));
    }
    if (isWider(policy.above().value().share().value(), STANDARD_ABOVE)) {
      found.add(
          Finding.at(
                  policy.above().at(),
                  "outputs up to %s are not judged, but IEC 60601-2-2 judges them from 10 percent"
                      .formatted(policy.above().value().text()))
              .help("check for a mistyped digit, or ask medical physics whether this is intended"));
    }
    return found;
  }

  private static boolean isWider(double percent, double most) {
    return percent > most && percent < WHOLE;
  }

  /** RFC 2606 keeps these last parts of an address for examples and tests. */
  private static List<Finding> clinicalAtExampleAddress(CheckedUnit checked) {
    UnitDetails details = checked.unit().details();
    String host = String.valueOf(details.address().value().getHost()).toLowerCase(Locale.ROOT);
    boolean reserved =
        host.matches("(.*\\.)?(example|test|invalid|localhost)|(.*\\.)?example\\.(com|net|org)");
    return details.status().value() == UnitStatus.CLINICAL && reserved
        ? List.of(
            Finding.at(
                    details.status().at(),
                    "the unit is clinical, but its address '%s' is for examples only"
                        .formatted(host))
                .note(details.address().at(), "the address")
                .help(
                    "give the real web address of the site, or set the status to 'demonstration'"))
        : List.of();
  }

  private static List<Finding> kindNeverSigned(CheckedUnit checked) {
    UnitDetails details = checked.unit().details();
    List<Finding> found = new ArrayList<>();
    for (SignedKind kind : SignedKind.values()) {
      if (isListed(kind)
          && !details.signatures().containsKey(kind)
          && !checked.unit().anyBroken(Kind.ROLE)) {
        found.add(
            Finding.at(details.name().at(), "nobody signs " + spoken(kind))
                .help("add the kind and its roles under 'signatures'"));
      } else if (!details.reviewAfter().containsKey(kind)) {
        found.add(
            Finding.at(details.name().at(), neverReviewed(kind))
                .help("add the kind and its interval under 'review-after'"));
      }
    }
    return found;
  }

  /** Everybody who signs anything signs the policies. */
  private static boolean isListed(SignedKind kind) {
    return kind != SignedKind.POLICIES;
  }

  private static String spoken(SignedKind kind) {
    return switch (kind) {
      case SOURCES, POLICIES -> "the " + kind.word();
      case ASSET -> "an asset";
      case PROFILE, MACHINE, DRILL, CHECKLIST, ROOM -> "a " + kind.word();
    };
  }

  private static String neverReviewed(SignedKind kind) {
    return switch (kind) {
      case SOURCES, POLICIES -> spoken(kind) + " are signed once and never reviewed";
      case PROFILE, MACHINE, DRILL, CHECKLIST, ROOM, ASSET ->
          spoken(kind) + " is signed once and never reviewed";
    };
  }
}
