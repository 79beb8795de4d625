package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/**
 * What a machine shows and does when it detects a condition. The response is unknown if the tone or
 * the output is missing.
 *
 * @param lamps the colour that each lamp shows
 */
public record Response(
    Location at,
    Optional<Fact<Tone>> tone,
    Map<LampId, Fact<String>> lamps,
    Optional<Fact<String>> display,
    Optional<Fact<OutputSeen>> output,
    Fact<Evidence> evidence) {
  public Response {
    lamps = Collections.unmodifiableMap(new LinkedHashMap<>(lamps));
  }
}
