package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Pedal;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes on a pedal that does something else on the foot switches of the rooms. */
final class ModeOnWrongPedal implements Rule {
  private static final Fault FAULT =
      new Fault(
          "mode-on-wrong-pedal",
          Severity.ERROR,
          "a mode stands on a pedal that does something else");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      profile.settings().ifPresent(it -> found.addAll(check(analysis.unit(), profile, it)));
    }
    return found;
  }

  private static List<Problem> check(Unit unit, Profile profile, Settings settings) {
    List<Problem> wrong = new ArrayList<>();
    for (PedalColour colour : PedalColour.values()) {
      settings
          .pedal(colour)
          .setting()
          .flatMap(setting -> problem(unit, profile, colour, setting))
          .ifPresent(wrong::add);
    }
    if (wrong.size() < 2) {
      return wrong;
    }
    return List.of(
        FAULT
            .at(settings.yellow().at(), "the modes of the two pedals are swapped")
            .note(settings.blue().at(), "the other pedal")
            .help("put each mode on the pedal that works it"));
  }

  private static Optional<Problem> problem(
      Unit unit, Profile profile, PedalColour colour, PedalSetting setting) {
    Mode mode = setting.mode().value();
    for (FootSwitch footSwitch : footSwitches(unit, profile)) {
      for (Pedal pedal : footSwitch.pedals()) {
        if (pedal.colour().value() == colour && pedal.does().value() != mode.pedal().value()) {
          return Optional.of(problem(colour, setting, footSwitch, pedal));
        }
      }
    }
    return Optional.empty();
  }

  private static Problem problem(
      PedalColour colour, PedalSetting setting, FootSwitch footSwitch, Pedal pedal) {
    Mode mode = setting.mode().value();
    return FAULT
        .at(
            setting.mode().at(),
            "%s is for the pedal for %s, and the %s pedal of %s is for %s"
                .formatted(
                    Wording.quoted(mode),
                    Wording.doing(mode.pedal().value()),
                    colour.word(),
                    Wording.quoted(footSwitch),
                    Wording.doing(pedal.does().value())))
        .note(mode.pedal().at(), "where the machine's description says which pedal")
        .help("move the setting to the other pedal, or name another mode");
  }

  private static List<FootSwitch> footSwitches(Unit unit, Profile profile) {
    Machine machine = profile.machine().value();
    List<FootSwitch> kept =
        unit.roomsServedBy(profile).stream()
            .flatMap(room -> unit.footSwitchesFor(room, machine).stream())
            .distinct()
            .toList();
    return kept.isEmpty() ? machine.footSwitches().stream().map(Fact::value).toList() : kept;
  }
}
