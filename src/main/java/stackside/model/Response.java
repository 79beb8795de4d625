package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/**
 * What a machine shows and does when it meets a condition. What is left out is not known; {@link
 * Machine#answer} says what follows from the condition itself.
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

  /** The same answer, silent and without output wherever it says nothing of these. */
  Response withoutPower() {
    return new Response(
        at,
        tone.or(() -> Optional.of(new Fact<>(Tone.NONE, at))),
        lamps,
        display,
        output.or(() -> Optional.of(new Fact<>(OutputSeen.NONE, at))),
        evidence);
  }
}
