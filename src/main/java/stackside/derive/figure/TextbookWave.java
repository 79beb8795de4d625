package stackside.derive.figure;

import java.util.List;
import stackside.energy.Crest;
import stackside.energy.Duty;
import stackside.model.Word;

/**
 * The waveforms of the textbooks as gated sines: the share of time in which current flows fixes the
 * crest factor. The sine and the last one, 6 percent on, are named by Wong Kee Song and Wallace,
 * chapter 7 (read); the two between are examples.
 */
public enum TextbookWave implements Word {
  ALWAYS_ON(1),
  HALF_ON(0.5),
  QUARTER_ON(0.25),
  HARDLY_ON(0.06);

  private final double share;

  TextbookWave(double share) {
    this.share = share;
  }

  public Duty duty() {
    return new Duty(share);
  }

  public Crest crest() {
    return Crest.ofGatedSine(duty());
  }

  /** From the lowest crest factor to the highest. */
  public static List<TextbookWave> all() {
    return List.of(values());
  }
}
