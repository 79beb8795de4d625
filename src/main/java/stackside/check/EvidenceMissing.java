package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Kind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks on what an approved answer with current rests. */
final class EvidenceMissing implements Question {
  private static final Fault FAULT =
      new Fault(
          "evidence-missing",
          Severity.WARNING,
          "settings are approved and nothing is named for them");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.CITATION)) {
      return List.of();
    }
    return analysis.unit().profiles().stream()
        .filter(profile -> profile.evidence().isEmpty() && !profile.answers(FAULT.id()))
        .filter(profile -> profile.settings().isPresent())
        .map(
            profile ->
                FAULT
                    .at(profile.at(), "profile '" + profile.id().slug() + "' names no evidence")
                    .help(
                        "add 'evidence' with an id of sources.yaml; the unit's own minutes will do"))
        .toList();
  }
}
