package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/** What is seen and heard when something is wrong. */
public record Sign(
    Location at,
    Optional<Fact<Tone>> tone,
    Map<LampId, Fact<String>> lamps,
    Optional<Fact<String>> display,
    Optional<Fact<String>> tissue) {
  public Sign {
    lamps = Collections.unmodifiableMap(new LinkedHashMap<>(lamps));
  }

  /** Whether the machine shows it; a sign on the tissue alone says nothing of the machine. */
  public boolean ofMachine() {
    return tone.isPresent() || !lamps.isEmpty() || display.isPresent();
  }
}
