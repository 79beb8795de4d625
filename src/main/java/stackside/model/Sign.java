package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/** What people see and hear when something is wrong. */
public record Sign(
    Location at,
    Optional<Fact<Tone>> tone,
    Map<LampId, Fact<String>> lamps,
    Optional<Fact<String>> display,
    Optional<Fact<String>> tissue) {
  public Sign {
    lamps = Collections.unmodifiableMap(new LinkedHashMap<>(lamps));
  }

  /** Whether the machine shows it. A sign on the tissue alone says nothing about the machine. */
  public boolean ofMachine() {
    return tone.isPresent() || !lamps.isEmpty() || display.isPresent();
  }

  /**
   * Whether the two signs cannot occur together. A detail that one of them leaves open contradicts
   * nothing.
   */
  public boolean contradicts(Sign other) {
    return differ(tone, other.tone)
        || differ(display, other.display)
        || differ(tissue, other.tissue)
        || lamps.entrySet().stream()
            .anyMatch(
                lamp ->
                    differ(
                        Optional.of(lamp.getValue()),
                        Optional.ofNullable(other.lamps.get(lamp.getKey()))));
  }

  private static <T> boolean differ(Optional<Fact<T>> one, Optional<Fact<T>> other) {
    return one.isPresent()
        && other.isPresent()
        && !one.orElseThrow().value().equals(other.orElseThrow().value());
  }
}
