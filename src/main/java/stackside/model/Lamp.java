package stackside.model;

import java.util.Locale;
import stackside.source.Location;

/** A lamp on a machine. */
public record Lamp(Location at, LampId id, Fact<String> name) {

  /** Whether a colour, as an author writes it, means that a lamp is not lit. */
  public static boolean isOut(String colour) {
    String words = colour.toLowerCase(Locale.ROOT);
    return words.equals("off") || words.equals("out") || words.equals("dark");
  }
}
