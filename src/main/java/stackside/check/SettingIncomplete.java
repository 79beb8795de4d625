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
    return MisfitSettings.problems(
        analysis.unit(), FAULT, setting -> Stream.of(level(setting), limit(setting)));
  }

  private static Optional<MisfitSettings.Misfit> level(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .level()
        .filter(scale -> setting.level().isEmpty())
        .map(scale -> misfit(setting, Wording.small(scale.name().value()), scale.at()));
  }

  private static Optional<MisfitSettings.Misfit> limit(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .powerLimit()
        .filter(range -> setting.limit().isEmpty())
        .map(range -> misfit(setting, "a power limit", range.at()));
  }

  private static MisfitSettings.Misfit misfit(
      PedalSetting setting, String control, Location described) {
    Mode mode = setting.mode().value();
    Problem problem =
        FAULT
            .at(
                setting.mode().at(),
                "%s is set by %s, and none is given here".formatted(Wording.quoted(mode), control))
            .note(described, "the machine's description of this control")
            .help("add what was approved");
    return new MisfitSettings.Misfit(
        mode, problem, described, "%s is not set by %s".formatted(Wording.quoted(mode), control));
  }
}
