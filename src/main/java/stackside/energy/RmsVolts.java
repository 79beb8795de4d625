package stackside.energy;

import stackside.quantity.Ohms;
import stackside.quantity.Watts;

/** A root mean square voltage. Content states peak voltages only. */
public record RmsVolts(double value) {

  public RmsVolts {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("no voltage: " + value);
    }
  }

  /** The voltage across a load that takes this power: U = √(P R). */
  public static RmsVolts across(Ohms load, Watts power) {
    return new RmsVolts(StrictMath.sqrt(power.value() * load.value()));
  }

  /** The power that this voltage drives into a load: P = U² / R. */
  public Watts into(Ohms load) {
    return new Watts(value * value / load.value());
  }
}
