package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds set-up steps that guard against a fault and do not say what to see. */
final class GuardWithoutSight implements Rule {
  private static final Fault FAULT =
      new Fault(
          "guard-without-sight",
          Severity.ERROR,
          "a step guards against a fault and says not what to see");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().checklists().stream()
        .flatMap(list -> list.steps().stream())
        .filter(step -> !step.guards().isEmpty() && step.see().isEmpty())
        .map(
            step ->
                FAULT
                    .at(
                        step.action().at(),
                        "this step guards against '%s' and does not say what to see"
                            .formatted(step.guards().get(0).value().word()))
                    .help("add 'see' with what it looks like when it is right"))
        .toList();
  }
}
