package stackside.derive.output;

import java.util.Optional;
import stackside.energy.Crest;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.quantity.Amperes;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/** A mode with its level and power limit, wherever it was written. */
public record ModeSetting(Mode mode, Optional<Level> level, Optional<Watts> limit) {

  /** The setting of a pedal in a profile. */
  public static ModeSetting of(PedalSetting pedal) {
    return new ModeSetting(
        pedal.mode().value(), pedal.level().map(Fact::value), pedal.limit().map(Fact::value));
  }

  /** The requested power: the set limit, or the rating of the level. */
  public Optional<Watts> dialled() {
    return limit.or(() -> mode.ratedPower().flatMap(rated -> rated.at(level)).map(Fact::value));
  }

  /** The mode's peak voltage at this level. */
  public Optional<PeakVolts> peak() {
    return mode.peakVoltage().flatMap(byLevel -> byLevel.at(level)).map(Fact::value);
  }

  /** The mode's crest factor at this level. */
  public Optional<Crest> crest() {
    return mode.crestFactor()
        .flatMap(byLevel -> byLevel.at(level))
        .map(fact -> new Crest(fact.value().value()));
  }

  /** The mode's current limit at this level. */
  public Optional<Amperes> currentLimit() {
    return mode.currentLimit().flatMap(byLevel -> byLevel.at(level)).map(Fact::value);
  }
}
