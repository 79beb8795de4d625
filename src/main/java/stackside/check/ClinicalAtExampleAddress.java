package stackside.check;

import java.util.List;
import java.util.Locale;
import stackside.derive.Analysis;
import stackside.model.UnitDetails;
import stackside.model.UnitStatus;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds clinical units whose address nobody can reach: its last part is kept for examples and tests
 * by RFC 2606.
 */
final class ClinicalAtExampleAddress implements Rule {
  private static final Fault FAULT =
      new Fault(
          "clinical-at-example-address",
          Severity.ERROR,
          "a clinical unit names an address that is for examples only");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    UnitDetails details = analysis.unit().details();
    String host = String.valueOf(details.address().value().getHost()).toLowerCase(Locale.ROOT);
    boolean reserved =
        host.matches("(.*\\.)?(example|test|invalid|localhost)|(.*\\.)?example\\.(com|net|org)");
    return details.status().value() == UnitStatus.CLINICAL && reserved
        ? List.of(
            FAULT
                .at(
                    details.status().at(),
                    "the unit is said to be clinical, and its address '%s' is for examples only"
                        .formatted(host))
                .note(details.address().at(), "the address")
                .help("write the address at which the site is served, or 'demonstration'"))
        : List.of();
  }
}
