package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.LampId;
import stackside.model.Machine;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lamps in the sign of a drill that none of its machines has. */
final class LampUnknown implements Rule {
  private static final Fault FAULT =
      new Fault("lamp-unknown", Severity.ERROR, "a drill's sign names a lamp that no machine has");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.MACHINE)) {
      return List.of();
    }
    return unit.drills().stream().flatMap(drill -> unknown(unit, drill).stream()).toList();
  }

  private static List<Problem> unknown(Unit unit, Drill drill) {
    List<Problem> found = new ArrayList<>();
    drill
        .sign()
        .lamps()
        .forEach(
            (lamp, colour) -> {
              if (machines(unit, drill).noneMatch(it -> it.lamp(lamp).isPresent())) {
                found.add(problem(drill, lamp, colour));
              }
            });
    return found;
  }

  private static Stream<Machine> machines(Unit unit, Drill drill) {
    return unit.machines().stream().filter(drill.appliesTo()::holds);
  }

  private static Problem problem(Drill drill, LampId lamp, Fact<String> colour) {
    return FAULT
        .at(
            colour.at(),
            "no machine that %s is for has a lamp '%s'".formatted(Wording.quoted(drill), lamp))
        .help("write the id of a lamp as the machine's description gives it under 'lamps'");
  }
}
