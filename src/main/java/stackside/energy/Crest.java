package stackside.energy;

import stackside.quantity.PeakVolts;

/** A crest factor: peak over root mean square, both taken over the same stretch of time. */
public record Crest(double factor) {

  public Crest {
    if (!(factor >= 1) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException("no crest factor: " + factor);
    }
  }

  /**
   * The crest factor of a gated sine over a whole on-off cycle, where the duty is the share of the
   * cycle that is on.
   */
  public static Crest ofGatedSine(Duty duty) {
    return new Crest(StrictMath.sqrt(2 / duty.share()));
  }

  /**
   * The duty of a gated sine that has this crest factor. A factor below that of a plain sine is
   * treated as a rounded plain sine.
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
