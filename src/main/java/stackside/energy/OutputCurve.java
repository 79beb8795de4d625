package stackside.energy;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * What a mode at one setting delivers into each load: within the burst for a pulsed mode, over the
 * cycle otherwise. The curve says nothing about loads outside the published range.
 */
public sealed interface OutputCurve permits LimitedOutput, TabulatedOutput {

  /** The loads that the curve covers. */
  LoadRange loads();

  /** The power into a load; absent where it is not published. */
  Optional<Watts> power(Ohms load);

  /** The highest power into any of these loads. */
  Watts highest();

  /** The loads into which this power flows in full; absent if there are none. */
  Optional<LoadSpan> reaching(Watts power);

  /**
   * The peak voltage across a load; absent where the power or the crest factor is not published.
   */
  Optional<PeakVolts> peakVoltage(Ohms load);

  /** The root mean square current through a load. */
  default Optional<Amperes> current(Ohms load) {
    return power(load).map(power -> Current.through(load, power));
  }

  /** The highest root mean square current through any of these loads. */
  Amperes highestCurrent();
}
