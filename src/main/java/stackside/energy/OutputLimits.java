package stackside.energy;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * What limits the output of a mode: current, power, and voltage, given by its peak and crest
 * factor. The voltage is always known, and so is at least one of the other two; otherwise the
 * output into a small load would have no upper bound.
 */
public record OutputLimits(
    Optional<Amperes> current, Optional<Watts> power, PeakVolts peak, Crest crest) {

  public OutputLimits {
    if (current.isEmpty() && power.isEmpty()) {
      throw new IllegalArgumentException("neither a current nor a power limit");
    }
  }

  /** The root mean square voltage at which the peak is reached. */
  public RmsVolts voltage() {
    return crest.rms(peak);
  }

  /** The lowest of I² R, P and U² / R. */
  public Watts power(Ohms load) {
    double lowest = voltage().into(load).value();
    if (power.isPresent()) {
      lowest = Math.min(lowest, power.get().value());
    }
    if (current.isPresent()) {
      lowest = Math.min(lowest, Current.power(current.get(), load).value());
    }
    return new Watts(lowest);
  }

  /** Which limit applies at a load. */
  public Limb limb(Ohms load) {
    Watts least = power(load);
    if (power.stream().anyMatch(least::equals)) {
      return Limb.POWER;
    }
    return voltage().into(load).equals(least) ? Limb.VOLTAGE : Limb.CURRENT;
  }

  /** The part of a curve where one of the limits applies. */
  public enum Limb {
    CURRENT,
    POWER,
    VOLTAGE
  }
}
