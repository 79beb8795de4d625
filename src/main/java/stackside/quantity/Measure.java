package stackside.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How one kind of quantity is written. Numbers are plain decimals: no sign, no exponent, no
 * superfluous leading zero, no decimal comma.
 *
 * @param noun its name with the article: "a power"
 * @param units the units that may follow the number, with their size in the type's own unit
 * @param make builds the quantity from a value in the type's own unit
 */
public record Measure<Q extends Quantity>(
    String noun, List<UnitName> units, DoubleFunction<Q> make) {

  private static final Pattern FORM =
      Pattern.compile("(?<number>\\d+(?:\\.\\d+)?)(?<gap>\\s*)(?<unit>\\D.*)?");
  private static final double HUGEST = 1e6;

  /** A unit as written, and its size in the type's own unit. */
  public record UnitName(String text, double size) {}

  public Measure {
    units = List.copyOf(units);
  }

  /**
   * Reads a quantity.
   *
   * @throws UnreadableQuantity if the text is not such a quantity
   */
  public Q parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw unreadable("'" + text + "' is not " + noun);
    }
    String number = form.group("number");
    if (number.matches("0\\d.*")) {
      throw unreadable("'" + text + "' has an unnecessary leading zero");
    }
    String unit = form.group("unit");
    if (unit == null) {
      throw unreadable("'" + text + "' has no unit");
    }
    UnitName written = unitNamed(text, unit.strip().replaceAll("\\s+", " "));
    double value = Double.parseDouble(number);
    if (value > HUGEST) {
      throw unreadable("'" + text + "' is far too large for " + noun);
    }
    return make.apply(scaled(value, written.size()));
  }

  private UnitName unitNamed(String text, String unit) {
    return units.stream()
        .filter(known -> known.text().equals(unit))
        .findFirst()
        .orElseThrow(() -> unreadable(wrongUnit(text, unit)));
  }

  private String wrongUnit(String text, String unit) {
    if (units.stream().anyMatch(known -> known.text().equals(unit + " peak"))) {
      return "'" + text + "' does not say which voltage it is: peak, peak to peak or another";
    }
    if (unit.matches("k?V ?(pp|p-p|peak.to.peak)")) {
      return "'" + text + "' is peak to peak; give a peak voltage";
    }
    return "'" + text + "' is not " + noun + ": its unit '" + unit + "' is not " + unitWords();
  }

  private String unitWords() {
    return units.stream().map(UnitName::text).collect(Collectors.joining(" or "));
  }

  private static double scaled(double value, double size) {
    return size >= 1 ? value * size : value / Math.rint(1 / size);
  }

  private UnreadableQuantity unreadable(String problem) {
    return new UnreadableQuantity(
        problem, "write " + noun + " as a plain number, a space and " + unitWords());
  }
}
