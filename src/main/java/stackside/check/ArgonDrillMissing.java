package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Drill;
import stackside.model.EnergyKind;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.PedalSetting;
import stackside.model.SingleFault;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines that work with argon and have no drill for an empty cylinder. */
final class ArgonDrillMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "argon-drill-missing",
          Severity.ERROR,
          "argon is approved, and no drill mends an empty cylinder");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.DRILL)) {
      return List.of();
    }
    List<Problem> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      boolean mended = unit.drillsFor(machine).stream().anyMatch(ArgonDrillMissing::mends);
      unit.profilesOn(machine).stream()
          .flatMap(profile -> profile.pedalSettings().stream())
          .filter(it -> it.mode().value().kind().value() == EnergyKind.ARGON)
          .filter(it -> !mended)
          .findFirst()
          .ifPresent(it -> found.add(problem(machine, it)));
    }
    return found;
  }

  private static boolean mends(Drill drill) {
    return drill.checks().stream()
        .flatMap(check -> check.mends().stream())
        .anyMatch(fault -> fault.value() == SingleFault.ARGON_EMPTY);
  }

  private static Problem problem(Machine machine, PedalSetting setting) {
    return FAULT
        .at(
            setting.mode().at(),
            "%s works with argon on %s, and no drill for it mends an empty cylinder"
                .formatted(Wording.quoted(setting.mode().value()), Wording.quoted(machine)))
        .help("add a check with 'mends: [argon-empty]' to the drill for that sign");
  }
}
