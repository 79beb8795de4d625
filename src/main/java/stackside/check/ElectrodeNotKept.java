package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Electrode;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms that do not keep a neutral electrode that their profiles name. */
final class ElectrodeNotKept implements Rule {
  private static final Fault FAULT =
      new Fault(
          "electrode-not-kept",
          Severity.ERROR,
          "a room does not keep a neutral electrode that it needs");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<KitNeed<Electrode>> needs = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Profile profile : unit.profilesServing(room)) {
        profile
            .settings()
            .flatMap(Settings::neutralElectrode)
            .filter(it -> ElectrodeDoubt.of(unit, profile, it.value()) == ElectrodeDoubt.NONE)
            .map(it -> new KitNeed<>(room, it, "profile '" + profile.id().slug() + "'"))
            .ifPresent(needs::add);
      }
    }
    return KitNeed.unmet(FAULT, needs, room -> room.keeps().neutralElectrodes());
  }
}
