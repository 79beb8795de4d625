package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.quantity.PeakVolts;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about modes whose peak voltage falls from one level to the next. */
final class VoltageFallsWithLevel implements Rule {
  private static final Fault FAULT =
      new Fault(
          "voltage-falls-with-level", Severity.WARNING, "a higher level has a lower peak voltage");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().modes().stream()
        .filter(mode -> !Doubts.ofSparks(analysis, mode) && !Doubts.ofRatings(analysis, mode))
        .flatMap(mode -> problem(mode).stream())
        .toList();
  }

  private static Optional<Problem> problem(Mode mode) {
    List<Level> levels =
        mode.level().map(LevelScale::levels).orElse(List.of()).stream()
            .filter(level -> volts(mode, level).isPresent())
            .toList();
    for (int i = 1; i < levels.size(); i++) {
      Fact<PeakVolts> lower = volts(mode, levels.get(i - 1)).orElseThrow();
      Fact<PeakVolts> upper = volts(mode, levels.get(i)).orElseThrow();
      if (upper.value().compareTo(lower.value()) < 0) {
        return Optional.of(problem(mode, levels.get(i), lower, upper));
      }
    }
    return Optional.empty();
  }

  private static Optional<Fact<PeakVolts>> volts(Mode mode, Level level) {
    return mode.peakVoltage().flatMap(it -> it.at(Optional.of(level)));
  }

  private static Problem problem(
      Mode mode, Level level, Fact<PeakVolts> lower, Fact<PeakVolts> upper) {
    return FAULT
        .at(
            upper.at(),
            "%s at %s has %s, less than the %s at the level below"
                .formatted(
                    Wording.quoted(mode), Wording.level(mode, level), upper.value(), lower.value()))
        .note(lower.at(), "the level below")
        .help("compare both with the manufacturer's instructions; two values may be swapped");
  }
}
