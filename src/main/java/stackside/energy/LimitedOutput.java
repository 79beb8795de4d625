package stackside.energy;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * A curve calculated from the limits of a mode: with rising load first the current, then the power,
 * then the voltage holds it back.
 */
public record LimitedOutput(LoadRange loads, OutputLimits limits) implements OutputCurve {

  @Override
  public Optional<Watts> power(Ohms load) {
    return loads.holds(load) ? Optional.of(limits.power(load)) : Optional.empty();
  }

  @Override
  public Optional<PeakVolts> peakVoltage(Ohms load) {
    return power(load).map(power -> limits.crest().peak(RmsVolts.across(load, power)));
  }

  /** The curve rises to its top and falls from it, so the top is at the load nearest to it. */
  @Override
  public Watts highest() {
    return limits.power(nearest(top()));
  }

  /** A load at which the curve is highest: where the falling limb begins. */
  private double top() {
    double volts = limits.voltage().value();
    double byPower = limits.power().map(power -> volts * volts / power.value()).orElse(0.0);
    double byCurrent = limits.current().map(current -> volts / current.value()).orElse(0.0);
    return Math.max(byPower, byCurrent);
  }

  private Ohms nearest(double load) {
    return new Ohms(Math.min(Math.max(load, loads.from().value()), loads.to().value()));
  }

  @Override
  public Optional<LoadSpan> reaching(Watts power) {
    double volts = limits.voltage().value();
    boolean held = limits.power().stream().anyMatch(limit -> limit.compareTo(power) < 0);
    double least =
        limits
            .current()
            .map(current -> power.value() / (current.value() * current.value()))
            .orElse(0.0);
    double most = volts * volts / power.value();
    double from = Math.max(least, loads.from().value());
    double to = Math.min(most, loads.to().value());
    return held || from > to
        ? Optional.empty()
        : Optional.of(new LoadSpan(new Ohms(from), new Ohms(to)));
  }

  /** Current never rises with the load. */
  @Override
  public Amperes highestCurrent() {
    return Current.through(loads.from(), limits.power(loads.from()));
  }
}
