package stackside.derive.circuit;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stackside.model.Condition;
import stackside.model.Fact;
import stackside.model.Lamp;
import stackside.model.LampId;
import stackside.model.Response;
import stackside.model.Sign;
import stackside.model.Tone;
import stackside.model.Unsaid;

/**
 * What people in the room see and hear while a pedal is pressed.
 *
 * @param lamps the colours that the machine's description gives
 * @param display a message on the display, where the machine's description gives one
 * @param dark whether everything else is dark, for want of mains; if not, it is taken to look as
 *     usual, so that what nobody has described never counts as a warning
 */
public record Observation(
    Tone tone, Map<LampId, String> lamps, Optional<String> display, boolean dark) {

  public Observation {
    lamps = Collections.unmodifiableMap(new TreeMap<>(lamps));
  }

  /** What a known answer to a condition says. */
  static Observation of(Condition condition, Response response) {
    Map<LampId, String> lamps = new TreeMap<>();
    response.lamps().forEach((lamp, colour) -> lamps.put(lamp, colour.value()));
    return new Observation(
        response.tone().orElseThrow().value(),
        lamps,
        response.display().map(Fact::value),
        condition.unsaid() == Unsaid.DARK);
  }

  /** Everything as usual. */
  public static Observation asUsual() {
    return new Observation(Tone.USUAL, Map.of(), Optional.empty(), false);
  }

  /** Nothing happens: no tone, and the lamps stay as they were. */
  public static Observation nothingHappens() {
    return new Observation(Tone.NONE, Map.of(), Optional.empty(), false);
  }

  /**
   * Whether nothing warns: the usual tone, no message, and no lamp that is flashing or red, the
   * colour of a fault (IEC 60601-2-2).
   */
  public boolean silent() {
    return tone == Tone.USUAL
        && !dark
        && display.isEmpty()
        && lamps.values().stream().noneMatch(Observation::warns);
  }

  private static boolean warns(String colour) {
    String words = colour.toLowerCase(Locale.ROOT);
    return words.contains("red") || words.contains("flash") || words.contains("blink");
  }

  /**
   * Whether a drill's sign is this one. What the sign leaves open fits. A lamp whose colour is not
   * described is out in the dark; else it is neither out nor warning, and any other colour fits it.
   * A sign of tissue alone fits nothing, for it says nothing of the machine.
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
                  return shown == null ? undescribed(colour) : shown.equals(colour);
                });
  }

  private boolean undescribed(String colour) {
    return dark ? Lamp.isOut(colour) : !warns(colour) && !Lamp.isOut(colour);
  }
}
