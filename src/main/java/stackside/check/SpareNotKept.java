package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Accessory;
import stackside.model.Drill;
import stackside.model.Room;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms without a spare that a drill for one of their machines needs. */
final class SpareNotKept implements Rule {
  private static final Fault FAULT =
      new Fault("spare-not-kept", Severity.ERROR, "a room lacks a spare that a drill needs");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<KitNeed<Accessory>> needs = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Drill drill : unit.drills()) {
        if (unit.machinesIn(room).stream().anyMatch(drill.appliesTo()::holds)) {
          drill.checks().stream()
              .flatMap(check -> check.needs().stream())
              .map(it -> new KitNeed<>(room, it, "the drill " + Wording.quoted(drill)))
              .forEach(needs::add);
        }
      }
    }
    return KitNeed.unmet(FAULT, needs, room -> room.keeps().spares());
  }
}
