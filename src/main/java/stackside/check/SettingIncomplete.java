package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds settings that leave a control of the mode to chance. */
final class SettingIncomplete implements Rule {
  private static final Fault FAULT =
      new Fault(
          "setting-incomplete",
          Severity.ERROR,
          "a setting leaves out a level or a power limit that the mode needs");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .flatMap(setting -> Stream.of(level(setting), limit(setting)))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Problem> level(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return mode.level()
        .filter(scale -> setting.level().isEmpty())
        .map(scale -> problem(setting, scale.name().value(), scale.at()));
  }

  private static Optional<Problem> limit(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return mode.powerLimit()
        .filter(range -> setting.limit().isEmpty())
        .map(range -> problem(setting, "a power limit", range.at()));
  }

  private static Problem problem(PedalSetting setting, String control, Location described) {
    return FAULT
        .at(
            setting.mode().at(),
            "%s is set by %s, and none is given here"
                .formatted(Wording.quoted(setting.mode().value()), control))
        .note(described, "the machine's description of this control")
        .help("add what was approved");
  }
}
