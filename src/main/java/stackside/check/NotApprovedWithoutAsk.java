package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks whom staff should turn to where something is not approved. */
final class NotApprovedWithoutAsk implements Question {
  private static final Fault FAULT =
      new Fault(
          "not-approved-without-ask",
          Severity.WARNING,
          "something is not approved, and nobody to ask is named");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .filter(profile -> profile.ask().isEmpty() && !profile.answers(FAULT.id()))
        .flatMap(profile -> profile.notApproved().stream())
        .map(
            words ->
                FAULT
                    .at(
                        words.at(),
                        "this is not approved here, and the profile names nobody to ask")
                    .help("add 'ask' with a role of unit.yaml, or say why not under 'because'"))
        .toList();
  }
}
