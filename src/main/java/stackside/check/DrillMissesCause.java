package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.Mending;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Drill;
import stackside.model.Kind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds drills for a sign that also comes from a fault which none of their checks mends. */
final class DrillMissesCause implements Rule {
  private static final Fault FAULT =
      new Fault(
          "drill-misses-cause",
          Severity.ERROR,
          "a drill's sign can come from a fault that none of its checks mends");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Drill, List<FailureSign>> missed = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(analysis)) {
      boolean silentAndUnmended = sign.outcomeClass().silent() && sign.drills().isEmpty();
      if (sign.outcomeClass() != OutcomeClass.RIGHT
          && sign.drills().stream().noneMatch(Mending::fits)
          && !silentAndUnmended
          && !leftToTheSetUp(sign)) {
        sign.fitting().stream()
            .filter(DrillMissesCause::mendsSomething)
            .findFirst()
            .ifPresent(drill -> missed.computeIfAbsent(drill, it -> new ArrayList<>()).add(sign));
      }
    }
    return missed.entrySet().stream()
        .map(entry -> problem(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** What is not described at all is first a matter of the set-up. */
  private static boolean leftToTheSetUp(FailureSign sign) {
    return Consequences.undescribed(sign) && sign.guards().isEmpty();
  }

  /** A drill that mends nothing at all has a mistake of its own. */
  private static boolean mendsSomething(Drill drill) {
    return drill.checks().stream().anyMatch(check -> !check.mends().isEmpty());
  }

  private static Problem problem(Drill drill, List<FailureSign> signs) {
    return FAULT
        .at(
            drill.sign().at(),
            "this sign also comes from %s on %s, and no check of the drill mends that"
                .formatted(
                    Wording.list(signs.stream().map(it -> "'" + it.fault().word() + "'").toList()),
                    Wording.quoted(signs.stream().map(FailureSign::machine).toList())))
        .help("add a check that mends it, or make the sign say what tells the two apart");
  }
}
