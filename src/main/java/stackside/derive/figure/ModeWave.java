package stackside.derive.figure;

import java.util.List;
import java.util.Optional;
import stackside.derive.output.Outputs;
import stackside.derive.output.Setting;
import stackside.energy.Crest;
import stackside.energy.Duty;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PulseTiming;
import stackside.model.Waveform;

/**
 * The waveform of a mode as far as its crest factor and its rhythm tell it: as if a sine were let
 * through for a share of the time.
 *
 * @param level the one that the crest factor is of; absent where it is the same at all
 * @param letThrough the share of time of that sine
 */
public record ModeWave(
    Mode mode, Optional<Level> level, Crest crest, Duty letThrough, Optional<PulseTiming> pulse) {

  /**
   * The waveform at the level that approved answers ask for most often, or at the lowest where none
   * asks for the mode. Absent where no crest factor is published.
   */
  public static Optional<ModeWave> of(Mode mode, Outputs outputs) {
    Optional<Level> level = level(mode, outputs);
    boolean same = mode.crestFactor().map(factors -> factors.all().isPresent()).orElse(false);
    return new Setting(mode, level, Optional.empty())
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

  /** Whether the crest factor holds within a burst, and not over the whole cycle. */
  public boolean withinBurst() {
    return mode.waveform().value() == Waveform.PULSED;
  }
}
