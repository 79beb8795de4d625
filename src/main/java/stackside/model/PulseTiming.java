package stackside.model;

import java.util.Optional;
import stackside.quantity.Seconds;
import stackside.source.Location;

/** The timing of a pulsed mode. */
public record PulseTiming(
    Location at, Fact<Seconds> on, Fact<Seconds> every, Optional<Fact<Boolean>> adjustable) {

  /** Whether current flows for part of the cycle, rather than for none or all of it. */
  public boolean isPulse() {
    return on.value().value() > 0 && on.value().compareTo(every.value()) < 0;
  }

  /** The share of time in which current flows, from 0 to 1. */
  public double duty() {
    return on.value().value() / every.value().value();
  }
}
