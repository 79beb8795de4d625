package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Condition;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds faults that pass unnoticed and that no step of a set-up guards against. An empty argon
 * cylinder is left to {@link ArgonCylinderUnchecked}.
 */
final class SilentOutcomeUnguarded implements Rule {
  private static final Fault FAULT =
      new Fault(
          "silent-outcome-unguarded",
          Severity.ERROR,
          "a fault passes unnoticed, and no set-up step guards against it");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    Map<Checklist, List<FailureSign>> unguarded = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(analysis)) {
      if (sign.outcomeClass().silent() && sign.guards().isEmpty()) {
        setUp(unit, sign.machine())
            .ifPresent(list -> unguarded.computeIfAbsent(list, it -> new ArrayList<>()).add(sign));
      }
    }
    return unguarded.entrySet().stream()
        .map(entry -> problem(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Optional<Checklist> setUp(Unit unit, Machine machine) {
    return unit.checklistsFor(machine).stream()
        .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
        .findFirst();
  }

  private static Problem problem(Checklist list, List<FailureSign> signs) {
    FailureSign worst = signs.get(0);
    Problem problem =
        FAULT
            .at(
                list.kind().at(),
                "no step of this set-up guards against %s, which passes unnoticed on %s"
                    .formatted(
                        Wording.list(
                            signs.stream().map(it -> "'" + it.fault().word() + "'").toList()),
                        Wording.quoted(signs.stream().map(FailureSign::machine).toList())))
            .note(
                worst.outcomes().get(0).profile().at(),
                "with this profile, for one, " + Consequences.words(worst.outcomeClass()));
    for (FailureSign sign : signs) {
      if (Consequences.undescribed(sign)) {
        problem =
            problem.note(
                sign.machine().name().at(),
                "how the machine answers '%s' is not described, and counts as unnoticed"
                    .formatted(sign.condition().map(Condition::word).orElse(sign.fault().word())));
      }
    }
    return problem.help(
        "add a step that looks, traces or reads aloud, with these words under 'guards'");
  }
}
