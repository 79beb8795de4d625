package stackside.energy;

import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;

/** Ohm's and Joule's laws for root mean square currents. */
public final class Current {
  private Current() {}

  /** The current through a load that takes a power: I = √(P / R). */
  public static Amperes through(Ohms load, Watts power) {
    return new Amperes(StrictMath.sqrt(power.value() / load.value()));
  }

  /** The power that a current leaves in a load: P = I² R. */
  public static Watts power(Amperes current, Ohms load) {
    return new Watts(current.value() * current.value() * load.value());
  }
}
