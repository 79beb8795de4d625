package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/**
 * What a machine shows and does when it meets a condition. Without a tone or an output the answer
 * is unknown.
 *
 * @param lamps the colour each lamp shows
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
