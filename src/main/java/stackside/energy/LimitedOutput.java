package stackside.energy;

import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * A curve calculated from the limits of a mode. As the load rises, the output is limited first by
 * current, then by power, then by voltage.
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

  /**
   * The curve rises to its top and then falls, so the highest published power is at the load
   * nearest to the top. Where the current and voltage limits meet, the curve is at its top or, if
   * the power limit is lower, on its flat part. Without a current limit it never rises.
   */
  @Override
  public Watts highest() {
    double volts = limits.voltage().value();
    double top = limits.current().map(current -> volts / current.value()).orElse(0.0);
    return limits.power(nearest(top));
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
