package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.source.Location;

/** How we know that a machine responds to a condition in this way. Unknown counts as silent. */
public record Evidence(Basis basis, Optional<Observation> observation) {

  /** How the response is known. */
  public enum Basis implements Word {
    OBSERVED,
    MANUAL,
    ASSUMED,
    UNKNOWN
  }

  /** When, on which asset and with which software the response was seen. */
  public record Observation(
      Location at, Fact<LocalDate> observed, Fact<ThingId> asset, Fact<String> software) {}

  public static Evidence of(Basis basis) {
    return new Evidence(basis, Optional.empty());
  }

  public static Evidence observed(Observation observation) {
    return new Evidence(Basis.OBSERVED, Optional.of(observation));
  }
}
