package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.model.ChecklistKind;
import stackside.model.Condition;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.SingleFault;
import stackside.model.Unit;

/** Summarises outcomes as failure signs, and says what guards against each and what mends it. */
final class FailureSigns {
  private static final Comparator<FailureSign> WORST_FIRST =
      Comparator.comparing(FailureSign::outcomeClass).thenComparing(FailureSign::fault);

  private FailureSigns() {}

  /** What the outcomes of one line have in common. */
  private record SignKey(
      SingleFault fault,
      Reach reach,
      ReturnPath returnPath,
      Optional<Condition> condition,
      Observation observed,
      Optional<Evidence.Basis> evidence,
      OutcomeClass outcomeClass) {

    static SignKey of(FaultOutcome outcome) {
      Press worst = outcome.worst();
      return new SignKey(
          outcome.fault(),
          worst.reach(),
          worst.returnPath(),
          worst.condition(),
          worst.observed(),
          worst.evidence().map(Evidence::basis),
          worst.outcomeClass());
    }
  }

  /** Summarises the outcomes of one generator in one room as failure signs, worst first. */
  static List<FailureSign> of(Unit unit, List<FaultOutcome> outcomes) {
    Map<SignKey, List<FaultOutcome>> lines = new LinkedHashMap<>();
    for (FaultOutcome outcome : outcomes) {
      lines.computeIfAbsent(SignKey.of(outcome), line -> new ArrayList<>()).add(outcome);
    }
    List<FailureSign> signs = new ArrayList<>();
    lines.forEach((line, all) -> signs.add(sign(unit, line, all)));
    signs.sort(WORST_FIRST);
    return signs;
  }

  private static FailureSign sign(Unit unit, SignKey line, List<FaultOutcome> outcomes) {
    FaultOutcome first = outcomes.get(0);
    return new FailureSign(
        first.room(),
        first.asset(),
        line.fault(),
        line.reach(),
        line.returnPath(),
        line.condition(),
        line.observed(),
        line.evidence(),
        line.outcomeClass(),
        outcomes,
        guards(unit, first.machine(), line.fault()),
        mending(unit, first.machine(), line),
        unit.drillsFor(first.machine()).stream()
            .filter(drill -> line.observed().fits(drill.sign()))
            .toList());
  }

  private static List<Guard> guards(Unit unit, Machine machine, SingleFault fault) {
    return unit.checklistsFor(machine).stream()
        .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
        .flatMap(
            list ->
                list.steps().stream()
                    .filter(step -> names(step.guards(), fault))
                    .map(step -> new Guard(list, step)))
        .toList();
  }

  private static List<Mending> mending(Unit unit, Machine machine, SignKey line) {
    return unit.drillsFor(machine).stream()
        .map(drill -> mending(drill, line))
        .filter(mending -> !mending.checks().isEmpty())
        .sorted(Comparator.comparing(mending -> mending.fits() ? 0 : 1))
        .toList();
  }

  private static Mending mending(Drill drill, SignKey line) {
    List<DrillCheck> checks =
        drill.checks().stream().filter(check -> names(check.mends(), line.fault())).toList();
    return new Mending(drill, checks, line.observed().fits(drill.sign()));
  }

  private static boolean names(List<Fact<SingleFault>> faults, SingleFault fault) {
    return faults.stream().anyMatch(named -> named.value() == fault);
  }
}
