package stackside.derive.circuit;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stackside.model.Fact;
import stackside.model.LampId;
import stackside.model.Response;
import stackside.model.Sign;
import stackside.model.Tone;

/**
 * What people in the room see and hear while a pedal is pressed.
 *
 * @param lamps the colours given in the machine's description; any other lamp is as usual
 * @param display a message on the display; absent if it shows only what it always shows
 */
public record Observed(Tone tone, Map<LampId, String> lamps, Optional<String> display) {

  public Observed {
    lamps = Collections.unmodifiableMap(new TreeMap<>(lamps));
  }

  /** The observation according to a known response. */
  static Observed of(Response response) {
    Map<LampId, String> lamps = new TreeMap<>();
    response.lamps().forEach((lamp, colour) -> lamps.put(lamp, colour.value()));
    return new Observed(
        response.tone().orElseThrow().value(), lamps, response.display().map(Fact::value));
  }

  /** Everything as usual. */
  public static Observed asUsual() {
    return new Observed(Tone.USUAL, Map.of(), Optional.empty());
  }

  /** Nothing happens: no tone, and the lamps stay as they were. */
  public static Observed nothingHappens() {
    return new Observed(Tone.NONE, Map.of(), Optional.empty());
  }

  /**
   * Whether nothing warns: the usual tone, no message, and no lamp that is flashing or red, the
   * colour of a fault (IEC 60601-2-2).
   */
  public boolean silent() {
    return tone == Tone.USUAL
        && display.isEmpty()
        && lamps.values().stream().noneMatch(Observed::warns);
  }

  private static boolean warns(String colour) {
    String words = colour.toLowerCase(Locale.ROOT);
    return words.contains("red") || words.contains("flash") || words.contains("blink");
  }

  private static boolean isOut(String colour) {
    String words = colour.toLowerCase(Locale.ROOT);
    return words.equals("off") || words.equals("out") || words.equals("dark");
  }

  /**
   * Whether this matches the sign of a drill. Anything that the sign leaves open matches. A lamp
   * whose colour is not described is as usual; it is neither out nor warning, and matches any other
   * colour. A sign on the tissue alone matches nothing, because it says nothing about the machine.
   */
  public boolean fits(Sign sign) {
    return sign.ofMachine()
        && sign.tone().map(wanted -> wanted.value() == tone).orElse(true)
        && sign.display()
            .map(wanted -> display.map(wanted.value()::equals).orElse(false))
            .orElse(true)
        && sign.lamps().entrySet().stream()
            .allMatch(
                wanted -> {
                  String shown = lamps.get(wanted.getKey());
                  String colour = wanted.getValue().value();
                  return shown == null ? !warns(colour) && !isOut(colour) : shown.equals(colour);
                });
  }
}
