package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Prose;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Unit;
import stackside.source.Location;

/** Pedals: which mode stands on which, and whether the room has it. */
final class PedalRules {

  private static final Pattern ONE_PEDAL_ONLY =
      Pattern.compile(
          "\\b(yellow|blue) pedal only\\b|\\bonly the (yellow|blue) pedal\\b",
          Pattern.CASE_INSENSITIVE);

  private PedalRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "mode-on-wrong-pedal",
            "a mode is on a pedal that does something else",
            PedalRules::modeOnWrongPedal),
        error(
            "pedal-not-on-foot-switch",
            "a setting is on a pedal that the room's foot switch does not have",
            PedalRules::pedalNotOnFootSwitch),
        note(
            "pedal-colour-unusual",
            "the colours of a foot switch differ from IEC 60601-2-2",
            PedalRules::pedalColourUnusual),
        error(
            "one-pedal-unsaid",
            "the card prints a pedal that the words forbid",
            PedalRules::onePedalUnsaid),
        error(
            "foot-switch-missing",
            "a room keeps no foot switch that its machine takes",
            PedalRules::footSwitchMissing));
  }

  private static List<Finding> modeOnWrongPedal(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Profile profile : checked.unit().profiles()) {
      profile
          .settings()
          .ifPresent(it -> found.addAll(modeOnWrongPedal(checked.unit(), profile, it)));
    }
    return found;
  }

  private static List<Finding> modeOnWrongPedal(Unit unit, Profile profile, Settings settings) {
    List<Finding> wrong = new ArrayList<>();
    for (PedalColour colour : PedalColour.values()) {
      settings
          .pedal(colour)
          .setting()
          .flatMap(setting -> modeOnWrongPedal(unit, profile, colour, setting))
          .ifPresent(wrong::add);
    }
    if (wrong.size() < 2) {
      return wrong;
    }
    return List.of(
        Finding.at(settings.yellow().at(), "the modes of the two pedals are swapped")
            .note(settings.blue().at(), "the other pedal")
            .help("put each mode on its own pedal"));
  }

  private static Optional<Finding> modeOnWrongPedal(
      Unit unit, Profile profile, PedalColour colour, PedalSetting setting) {
    Mode mode = setting.mode().value();
    for (FootSwitch footSwitch : footSwitches(unit, profile)) {
      for (Pedal pedal : footSwitch.pedals()) {
        if (pedal.colour().value() == colour && pedal.does().value() != mode.pedal().value()) {
          return Optional.of(modeOnWrongPedal(colour, setting, footSwitch, pedal));
        }
      }
    }
    return Optional.empty();
  }

  private static Finding modeOnWrongPedal(
      PedalColour colour, PedalSetting setting, FootSwitch footSwitch, Pedal pedal) {
    Mode mode = setting.mode().value();
    return Finding.at(
            setting.mode().at(),
            "%s belongs on the pedal for %s, but the %s pedal of %s is for %s"
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

  private static List<Finding> pedalNotOnFootSwitch(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Profile profile : checked.unit().profiles()) {
      profile.settings().ifPresent(it -> pedalNotOnFootSwitch(checked.unit(), profile, it, found));
    }
    return found;
  }

  private static void pedalNotOnFootSwitch(
      Unit unit, Profile profile, Settings settings, List<Finding> found) {
    for (PedalColour colour : PedalColour.values()) {
      settings
          .pedal(colour)
          .setting()
          .flatMap(setting -> pedalNotOnFootSwitch(unit, profile, colour, setting))
          .ifPresent(found::add);
    }
  }

  private static Optional<Finding> pedalNotOnFootSwitch(
      Unit unit, Profile profile, PedalColour colour, PedalSetting setting) {
    for (Room room : unit.roomsServedBy(profile)) {
      List<FootSwitch> kept = unit.footSwitchesFor(room, profile.machine().value());
      if (!kept.isEmpty() && kept.stream().noneMatch(each -> hasPedal(each, colour))) {
        return Optional.of(
            Finding.at(
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

  private static boolean hasPedal(FootSwitch footSwitch, PedalColour colour) {
    return footSwitch.pedals().stream().anyMatch(pedal -> pedal.colour().value() == colour);
  }

  /**
   * Source: IEC 60601-2-2, clause on indicator colours, read in an adoption of an older edition:
   * yellow for cutting, blue for coagulation.
   */
  private static List<Finding> pedalColourUnusual(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (FootSwitch footSwitch : checked.unit().footSwitches()) {
      footSwitch.pedals().stream()
          .filter(pedal -> pedal.does().value() != usualAction(pedal.colour().value()))
          .findFirst()
          .ifPresent(pedal -> found.add(pedalColourUnusual(footSwitch, pedal)));
    }
    return found;
  }

  private static PedalAction usualAction(PedalColour colour) {
    return switch (colour) {
      case YELLOW -> PedalAction.CUT;
      case BLUE -> PedalAction.COAGULATION;
    };
  }

  private static Finding pedalColourUnusual(FootSwitch footSwitch, Pedal pedal) {
    return Finding.at(
            pedal.colour().at(),
            "the %s pedal of %s is for %s; in IEC 60601-2-2 yellow is for cutting and blue for coagulation"
                .formatted(
                    pedal.colour().value().word(),
                    Wording.quoted(footSwitch),
                    Wording.doing(pedal.does().value())))
        .help("look at the foot switch itself; if this is right, nothing needs to change");
  }

  /**
   * The words say one pedal only, but {@code press-only} does not name it, so the card prints a
   * setting for the other pedal too. English only.
   */
  private static List<Finding> onePedalUnsaid(CheckedUnit checked) {
    return checked.unit().profiles().stream().flatMap(PedalRules::onePedalUnsaid).toList();
  }

  private static Stream<Finding> onePedalUnsaid(Profile profile) {
    return profile.settings().stream()
        .filter(settings -> settings.assigned().size() > 1)
        .flatMap(
            settings ->
                Stream.of(profile.technique(), profile.caution())
                    .flatMap(Optional::stream)
                    .flatMap(prose -> onePedalUnsaid(settings, prose)));
  }

  private static Stream<Finding> onePedalUnsaid(Settings settings, Prose prose) {
    Optional<String> marked = settings.pressOnly().map(only -> only.value().word());
    return onlyPedal(prose).filter(said -> !marked.equals(Optional.of(said))).stream()
        .map(
            said ->
                Finding.at(
                        prose.at(),
                        "the words say the %s pedal only, but 'press-only' %s"
                            .formatted(
                                said, marked.map(other -> "is " + other).orElse("is missing")))
                    .help("write 'press-only: " + said + "' in the settings, or change the words"));
  }

  private static Optional<String> onlyPedal(Prose prose) {
    Matcher found = ONE_PEDAL_ONLY.matcher(prose.plain());
    return found.find()
        ? Optional.of(found.group(1) == null ? found.group(2) : found.group(1))
            .map(word -> word.toLowerCase(Locale.ROOT))
        : Optional.empty();
  }

  private static List<Finding> footSwitchMissing(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.FOOT_SWITCH)) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Machine machine : unit.machinesIn(room)) {
        if (unit.footSwitchesFor(room, machine).isEmpty()) {
          found.add(footSwitchMissing(room, machine));
        }
      }
    }
    return found;
  }

  private static Finding footSwitchMissing(Room room, Machine machine) {
    Location at = room.footSwitches().stream().findFirst().map(Fact::at).orElse(room.at());
    return Finding.at(
            at,
            "%s keeps no foot switch that %s takes"
                .formatted(Wording.quoted(room), Wording.quoted(machine)))
        .note(
            machine.footSwitches().stream().findFirst().map(Fact::at).orElse(machine.at()),
            "the foot switches that the machine takes")
        .help("add the foot switch to the room, or correct what the machine takes");
  }
}
