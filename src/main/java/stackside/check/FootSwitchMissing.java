package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Room;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms that keep no foot switch for one of their machines. */
final class FootSwitchMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "foot-switch-missing",
          Severity.ERROR,
          "a room keeps no foot switch that its machine takes");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.FOOT_SWITCH)) {
      return List.of();
    }
    List<Problem> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Machine machine : unit.machinesIn(room)) {
        if (unit.footSwitchesFor(room, machine).isEmpty()) {
          found.add(problem(room, machine));
        }
      }
    }
    return found;
  }

  private static Problem problem(Room room, Machine machine) {
    Location at = room.footSwitches().stream().findFirst().map(Fact::at).orElse(room.at());
    return FAULT
        .at(
            at,
            "%s keeps no foot switch that %s takes"
                .formatted(Wording.quoted(room), Wording.quoted(machine)))
        .note(
            machine.footSwitches().stream().findFirst().map(Fact::at).orElse(machine.at()),
            "the foot switches that the machine takes")
        .help("add the foot switch to the room, or correct what the machine takes");
  }
}
