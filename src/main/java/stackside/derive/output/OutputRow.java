package stackside.derive.output;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * What one setting delivers into one load.
 *
 * @param power within the burst if the mode is pulsed
 * @param averaged over the whole cycle; the same as the power if the mode is not pulsed
 * @param current root mean square, within the burst
 */
public record OutputRow(
    Ohms load, Watts power, Watts averaged, Amperes current, Optional<PeakVolts> peakVoltage) {}
