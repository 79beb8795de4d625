package stackside.derive.circuit;

import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.quantity.Watts;

/** A mode with its level and power limit, wherever it was written. */
public record Setting(Mode mode, Optional<Level> level, Optional<Watts> limit) {

  /** What a profile sets on a pedal. */
  public static Setting of(PedalSetting pedal) {
    return new Setting(
        pedal.mode().value(), pedal.level().map(Fact::value), pedal.limit().map(Fact::value));
  }
}
