package stackside.derive.figure;

import java.util.List;
import java.util.Optional;
import stackside.derive.output.Outputs;
import stackside.derive.output.ModeSetting;
import stackside.energy.Crest;
import stackside.energy.Duty;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PulseTiming;
import stackside.model.Waveform;

/**
 * The waveform of a mode as far as its crest factor and timing determine it: as if it were a gated
 * sine.
 *
 * @param level the level that the crest factor belongs to; absent if it is the same at all levels
 * @param letThrough the duty of that sine, as a share of time
 */
public record ModeWave(
    Mode mode, Optional<Level> level, Crest crest, Duty letThrough, Optional<PulseTiming> pulse) {

  /**
   * The waveform at the level that approved answers use most often, or at the lowest level if no
   * answer uses the mode. Absent if no crest factor is published.
   */
  public static Optional<ModeWave> of(Mode mode, Outputs outputs) {
    Optional<Level> level = level(mode, outputs);
    boolean same = mode.crestFactor().map(factors -> factors.all().isPresent()).orElse(false);
    return new ModeSetting(mode, level, Optional.empty())
        .crest()
        .map(
            crest ->
                new ModeWave(
                    mode,
                    level.filter(each -> !same),
                    crest,
                    crest.ofSineLetThrough(),
                    mode.pulse()));
  }

  private static Optional<Level> level(Mode mode, Outputs outputs) {
    List<Outputs.InUse> uses =
        outputs.inUse().stream()
            .filter(use -> use.setting().mode().id().equals(mode.id()))
            .sorted((one, other) -> other.asked().size() - one.asked().size())
            .toList();
    return uses.isEmpty()
        ? mode.level().map(scale -> scale.levels().get(0))
        : uses.get(0).setting().level();
  }

  /** Whether the crest factor applies within a burst rather than over the whole cycle. */
  public boolean withinBurst() {
    return mode.waveform().value() == Waveform.PULSED;
  }
}
