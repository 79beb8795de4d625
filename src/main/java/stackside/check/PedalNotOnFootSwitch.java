package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.FootSwitch;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds settings on a pedal that no foot switch of a room has. */
final class PedalNotOnFootSwitch implements Rule {
  private static final Fault FAULT =
      new Fault(
          "pedal-not-on-foot-switch",
          Severity.ERROR,
          "a setting stands on a pedal that the room's foot switch does not have");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      profile.settings().ifPresent(it -> check(analysis.unit(), profile, it, found));
    }
    return found;
  }

  private static void check(Unit unit, Profile profile, Settings settings, List<Problem> found) {
    for (PedalColour colour : PedalColour.values()) {
      settings
          .pedal(colour)
          .setting()
          .flatMap(setting -> problem(unit, profile, colour, setting))
          .ifPresent(found::add);
    }
  }

  private static Optional<Problem> problem(
      Unit unit, Profile profile, PedalColour colour, PedalSetting setting) {
    for (Room room : unit.roomsServedBy(profile)) {
      List<FootSwitch> kept = unit.footSwitchesFor(room, profile.machine().value());
      if (!kept.isEmpty() && kept.stream().noneMatch(each -> has(each, colour))) {
        return Optional.of(
            FAULT
                .at(
                    setting.at(),
                    "%s has no %s pedal, and %s keeps no other foot switch for %s"
                        .formatted(
                            Wording.quoted(kept.get(0)),
                            colour.word(),
                            Wording.quoted(room),
                            Wording.quoted(profile.machine().value())))
                .note(kept.get(0).at(), "the foot switch")
                .help("move the setting to a pedal that is there, or change the foot switch"));
      }
    }
    return Optional.empty();
  }

  private static boolean has(FootSwitch footSwitch, PedalColour colour) {
    return footSwitch.pedals().stream().anyMatch(pedal -> pedal.colour().value() == colour);
  }
}
