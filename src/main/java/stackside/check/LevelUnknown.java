package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.model.PublishedOutput;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds levels that a mode does not have: in profiles and in the description of the mode itself.
 */
final class LevelUnknown implements Rule {
  private static final Fault FAULT =
      new Fault("level-unknown", Severity.ERROR, "a level is none that the mode has");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Problem> inProfiles =
        MisfitSettings.problems(
            unit, FAULT, setting -> Stream.of(misfit(setting.mode().value(), setting.level())));
    Stream<Problem> inModes = unit.modes().stream().flatMap(mode -> inDescription(mode).limit(1));
    return Stream.concat(inProfiles.stream(), inModes).toList();
  }

  private static Stream<Problem> inDescription(Mode mode) {
    Stream<Optional<Fact<Level>>> inTables =
        Stream.of(mode.peakVoltage(), mode.crestFactor(), mode.currentLimit(), mode.ratedPower())
            .flatMap(Optional::stream)
            .flatMap(table -> table.each().entrySet().stream())
            .map(entry -> Optional.of(new Fact<>(entry.getKey(), entry.getValue().at())));
    Stream<Optional<Fact<Level>>> inPublished =
        mode.published().stream().map(PublishedOutput::level);
    return Stream.concat(inTables, inPublished)
        .flatMap(level -> misfit(mode, level).stream())
        .map(MisfitSettings.Misfit::problem);
  }

  private static Optional<MisfitSettings.Misfit> misfit(Mode mode, Optional<Fact<Level>> level) {
    return level.flatMap(
        fact ->
            mode.level()
                .filter(scale -> !scale.levels().contains(fact.value()))
                .map(scale -> misfit(mode, scale, fact)));
  }

  private static MisfitSettings.Misfit misfit(Mode mode, LevelScale scale, Fact<Level> level) {
    Problem problem =
        FAULT
            .at(
                level.at(),
                "%s has no %s".formatted(Wording.quoted(mode), Wording.level(mode, level.value())))
            .note(scale.at(), "the machine's description says " + Wording.levels(scale))
            .help("write a level as the display shows it, or correct the machine's description");
    return new MisfitSettings.Misfit(
        mode,
        problem,
        scale.at(),
        "%s has other levels than %s".formatted(Wording.quoted(mode), Wording.levels(scale)));
  }
}
