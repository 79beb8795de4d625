package stackside.energy;

import stackside.quantity.PeakVolts;

/** A crest factor: peak over root mean square, both of the same stretch of time. */
public record Crest(double factor) {

  public Crest {
    if (!(factor >= 1) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException("no crest factor: " + factor);
    }
  }

  /**
   * The crest factor of a sine that is let through for a share of the time, over the whole cycle of
   * letting through and holding back.
   */
  public static Crest ofGatedSine(Duty duty) {
    return new Crest(StrictMath.sqrt(2 / duty.share()));
  }

  /**
   * The share of time for which a sine would be let through to have this crest factor; a factor
   * below that of a sine is taken as a rounded sine.
   */
  public Duty ofSineLetThrough() {
    return new Duty(Math.min(1, 2 / (factor * factor)));
  }

  public RmsVolts rms(PeakVolts peak) {
    return new RmsVolts(peak.value() / factor);
  }

  public PeakVolts peak(RmsVolts rms) {
    return new PeakVolts(rms.value() * factor);
  }
}
