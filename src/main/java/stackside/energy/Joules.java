package stackside.energy;

import stackside.quantity.Seconds;
import stackside.quantity.Watts;

/** An energy. */
public record Joules(double value) {

  /** E = P t. */
  public static Joules of(Watts power, Seconds time) {
    return new Joules(power.value() * time.value());
  }

  /** How long a power takes to deliver it. */
  public Seconds at(Watts power) {
    return new Seconds(value / power.value());
  }
}
