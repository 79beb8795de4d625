package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.model.Drill;
import stackside.model.Kind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds faults that pass unnoticed and that no drill at all mends. */
final class SilentOutcomeUnmended implements Rule {
  private static final Fault FAULT =
      new Fault(
          "silent-outcome-unmended",
          Severity.ERROR,
          "a fault passes unnoticed, and no drill mends it");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Drill, List<FailureSign>> unmended = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(analysis)) {
      boolean leftToTheSetUp = Consequences.undescribed(sign) && sign.guards().isEmpty();
      if (sign.outcomeClass().silent() && sign.drills().isEmpty() && !leftToTheSetUp) {
        sign.fitting().stream()
            .findFirst()
            .ifPresent(drill -> unmended.computeIfAbsent(drill, it -> new ArrayList<>()).add(sign));
      }
    }
    return unmended.entrySet().stream()
        .map(entry -> problem(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Problem problem(Drill drill, List<FailureSign> signs) {
    FailureSign worst = signs.get(0);
    return FAULT
        .at(
            drill.sign().at(),
            "no drill mends %s, which passes unnoticed on %s and looks and sounds like this"
                .formatted(
                    Wording.list(signs.stream().map(it -> "'" + it.fault().word() + "'").toList()),
                    Wording.quoted(signs.stream().map(FailureSign::machine).toList())))
        .note(
            worst.outcomes().get(0).profile().at(),
            "with this profile, for one, " + Consequences.words(worst.outcomeClass()))
        .help("add a check that mends it to this drill");
  }
}
