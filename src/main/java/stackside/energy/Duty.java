package stackside.energy;

import stackside.quantity.Amperes;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;

/** The share of time in which current flows: greater than 0, at most 1. */
public record Duty(double share) {

  public Duty {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("no share of time: " + share);
    }
  }

  /** Continuous current. */
  public static Duty always() {
    return new Duty(1);
  }

  /** A burst that repeats at a fixed interval, both in seconds. */
  public static Duty of(Seconds on, Seconds every) {
    return new Duty(on.value() / every.value());
  }

  /** The power averaged over the whole cycle, given the power within the burst. */
  public Watts averaged(Watts withinBurst) {
    return new Watts(withinBurst.value() * share);
  }

  /** The root mean square current over the whole cycle, given the current within the burst. */
  public Amperes averaged(Amperes withinBurst) {
    return new Amperes(withinBurst.value() * StrictMath.sqrt(share));
  }
}
