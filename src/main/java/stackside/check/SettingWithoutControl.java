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

/** Finds levels and power limits for which the machine has no control. */
final class SettingWithoutControl implements Rule {
  private static final Fault FAULT =
      new Fault(
          "setting-without-control",
          Severity.ERROR,
          "a setting gives a level or a power limit that the mode has no control for");

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
    Mode mode = setting.mode().value();
    return setting
        .level()
        .filter(level -> mode.level().isEmpty())
        .map(level -> misfit(mode, level.at(), "level '" + level.value() + "'", "levels"));
  }

  private static Optional<MisfitSettings.Misfit> limit(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return setting
        .limit()
        .filter(limit -> mode.powerLimit().isEmpty() && mode.ratedPower().isPresent())
        .map(limit -> misfit(mode, limit.at(), "limit " + limit.value(), "a power limit"));
  }

  private static MisfitSettings.Misfit misfit(Mode mode, Location at, String what, String control) {
    Problem problem =
        FAULT
            .at(
                at,
                "%s cannot be set: %s has no control for it".formatted(what, Wording.quoted(mode)))
            .note(mode.at(), "the machine's description of the mode")
            .help("take it out, or add the control to the machine's description");
    return new MisfitSettings.Misfit(
        mode,
        problem,
        mode.name().at(),
        "%s has %s after all".formatted(Wording.quoted(mode), control));
  }
}
