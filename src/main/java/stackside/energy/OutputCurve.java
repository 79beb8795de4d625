package stackside.energy;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * What a mode at one setting delivers into each load: within the burst for a pulsed mode, over the
 * cycle otherwise. Nothing is said of loads outside the published ones.
 */
public sealed interface OutputCurve permits LimitedOutput, TabulatedOutput {

  /** The loads for which something is said. */
  LoadRange loads();

  /** The power into a load; absent where it is not published. */
  Optional<Watts> power(Ohms load);

  /** The highest power into any of the loads. */
  Watts highest();

  /** The loads into which a power flows in full; absent if there is none. */
  Optional<LoadSpan> reaching(Watts power);

  /** The peak voltage across a load; absent where power or crest factor are not published. */
  Optional<PeakVolts> peakVoltage(Ohms load);

  /** The root mean square current through a load. */
  default Optional<Amperes> current(Ohms load) {
    return power(load).map(power -> Current.through(load, power));
  }

  /** The highest root mean square current through any of the loads. */
  Amperes highestCurrent();
}
