package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
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
    Stream<Problem> inProfiles =
        unit.profiles().stream()
            .flatMap(profile -> profile.pedalSettings().stream())
            .flatMap(setting -> check(setting.mode().value(), setting.level()));
    Stream<Problem> inModes =
        unit.machines().stream()
            .flatMap(machine -> machine.modes().stream())
            .flatMap(LevelUnknown::inDescription);
    return Stream.concat(inProfiles, inModes).toList();
  }

  private static Stream<Problem> inDescription(Mode mode) {
    Stream<Problem> inTables =
        Stream.of(mode.peakVoltage(), mode.crestFactor(), mode.currentLimit(), mode.ratedPower())
            .flatMap(Optional::stream)
            .flatMap(table -> table.each().entrySet().stream())
            .flatMap(
                entry ->
                    check(mode, Optional.of(new Fact<>(entry.getKey(), entry.getValue().at()))));
    Stream<Problem> inPublished =
        mode.published().stream().flatMap(published -> check(mode, published.level()));
    return Stream.concat(inTables, inPublished);
  }

  private static Stream<Problem> check(Mode mode, Optional<Fact<Level>> level) {
    return level.stream()
        .flatMap(
            fact ->
                mode.level().stream()
                    .filter(scale -> !scale.levels().contains(fact.value()))
                    .map(scale -> problem(mode, scale, fact)));
  }

  private static Problem problem(Mode mode, LevelScale scale, Fact<Level> level) {
    return FAULT
        .at(
            level.at(),
            "%s has no %s".formatted(Wording.quoted(mode), Wording.level(mode, level.value())))
        .note(scale.at(), "the machine's description says " + Wording.levels(scale))
        .help("write a level as the display shows it, or correct the machine's description");
  }
}
