package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Drill;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Unit;
import stackside.quantity.LitresPerMinute;

/** Argon: its flow, its cylinder and its drill. */
final class ArgonRules {

  private static final double HALF_THE_LOWEST = 0.25;

  private static final double TWICE_THE_HIGHEST = 4;

  private ArgonRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "argon-flow-missing",
            "an argon setting gives no gas flow",
            ArgonRules::argonFlowMissing),
        error(
            "argon-flow-needless",
            "a gas flow is given, but no mode uses argon",
            ArgonRules::argonFlowNeedless),
        question(
            "argon-flow-far-off",
            "a gas flow is far from those used in published studies",
            ArgonRules::argonFlowFarOff),
        error(
            "argon-cylinder-unchecked",
            "argon is approved, but the set-up does not check the cylinder",
            ArgonRules::argonCylinderUnchecked),
        error(
            "argon-drill-missing",
            "argon is approved, but no drill mends an empty cylinder",
            ArgonRules::argonDrillMissing));
  }

  private static List<Finding> argonFlowMissing(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(settings -> settings.argonFlow().isEmpty())
        .flatMap(settings -> settings.assigned().stream())
        .filter(setting -> setting.mode().value().kind().value() == EnergyKind.ARGON)
        .map(
            setting ->
                Finding.at(
                        setting.mode().at(),
                        "%s uses argon, but no flow is given"
                            .formatted(Wording.quoted(setting.mode().value())))
                    .help("add 'argon-flow' with the approved flow"))
        .toList();
  }

  private static List<Finding> argonFlowNeedless(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(ArgonRules::noArgon)
        .flatMap(settings -> settings.argonFlow().stream())
        .map(
            flow ->
                Finding.at(
                        flow.at(),
                        "argon flow " + flow.value() + " is given, but no mode here uses argon")
                    .help("remove the flow, or name the argon mode"))
        .toList();
  }

  private static boolean noArgon(Settings settings) {
    return settings.assigned().stream()
        .noneMatch(setting -> setting.mode().value().kind().value() == EnergyKind.ARGON);
  }

  /**
   * A slipped decimal point makes such flows. Source: studies with 1 L/min to 2 L/min, read
   * (Gastrointest Endosc 2011;73:543; Scand J Gastroenterol 2006;41:175; Gastroenterol Clin Biol
   * 2000;24:1205); textbooks with 0.5 L/min for the right colon, from memory. Asked from half the
   * lowest and twice the highest.
   */
  private static List<Finding> argonFlowFarOff(CheckedUnit checked, Predicate<Profile> unanswered) {
    return checked.unit().profiles().stream()
        .filter(unanswered)
        .flatMap(profile -> profile.settings().flatMap(Settings::argonFlow).stream())
        .flatMap(flow -> argonFlowFarOff(flow).stream())
        .toList();
  }

  private static Optional<Finding> argonFlowFarOff(Fact<LitresPerMinute> flow) {
    double value = flow.value().value();
    if (HALF_THE_LOWEST <= value && value <= TWICE_THE_HIGHEST) {
      return Optional.empty();
    }
    String side = value < HALF_THE_LOWEST ? "below" : "above";
    return Optional.of(
        Finding.at(
                flow.at(),
                "argon flow %s is far %s the flows of published studies"
                    .formatted(flow.value(), side))
            .help("check the decimal point; if the flow is intended, say why under 'because'"));
  }

  private static List<Finding> argonCylinderUnchecked(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      List<Checklist> setUps =
          unit.checklistsFor(machine).stream()
              .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
              .toList();
      Optional<Profile> argon =
          unit.profilesOn(machine).stream().filter(ArgonRules::usesArgon).findFirst();
      if (argon.isPresent() && !setUps.isEmpty() && setUps.stream().noneMatch(it -> looks(it))) {
        found.add(argonCylinderUnchecked(machine, setUps.get(0), argon.orElseThrow()));
      }
    }
    return found;
  }

  private static boolean usesArgon(Profile profile) {
    return profile.pedalSettings().stream()
        .anyMatch(it -> it.mode().value().kind().value() == EnergyKind.ARGON);
  }

  private static boolean looks(Checklist checklist) {
    return checklist.steps().stream()
        .flatMap(step -> step.guards().stream())
        .anyMatch(guard -> guard.value() == SingleFault.ARGON_EMPTY);
  }

  private static Finding argonCylinderUnchecked(
      Machine machine, Checklist checklist, Profile argon) {
    return Finding.at(
            checklist.kind().at(),
            "%s uses argon, but no step of this set-up guards against an empty cylinder"
                .formatted(Wording.quoted(machine)))
        .note(argon.at(), "a profile with argon")
        .help("add a step that reads the cylinder's gauge, with 'guards: [argon-empty]'");
  }

  private static List<Finding> argonDrillMissing(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.DRILL)) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      boolean mended = unit.drillsFor(machine).stream().anyMatch(ArgonRules::mends);
      unit.profilesOn(machine).stream()
          .flatMap(profile -> profile.pedalSettings().stream())
          .filter(it -> it.mode().value().kind().value() == EnergyKind.ARGON)
          .filter(it -> !mended)
          .findFirst()
          .ifPresent(it -> found.add(argonDrillMissing(machine, it)));
    }
    return found;
  }

  private static boolean mends(Drill drill) {
    return drill.checks().stream()
        .flatMap(check -> check.mends().stream())
        .anyMatch(fault -> fault.value() == SingleFault.ARGON_EMPTY);
  }

  private static Finding argonDrillMissing(Machine machine, PedalSetting setting) {
    return Finding.at(
            setting.mode().at(),
            "%s uses argon on %s, but no drill for it mends an empty cylinder"
                .formatted(Wording.quoted(setting.mode().value()), Wording.quoted(machine)))
        .help("add a check with 'mends: [argon-empty]' to the drill for that sign");
  }
}
