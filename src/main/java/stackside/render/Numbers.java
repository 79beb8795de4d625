package stackside.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;
import stackside.quantity.Quantity;
import stackside.quantity.Seconds;

/**
 * Formats numbers as pages and cards print them: a no-break space before the unit, a comma from
 * 1,000 up, no trailing zero, a leading zero. (Space and comma as in the SI brochure 5.4.3 and the
 * ISMP list of error-prone notations.)
 */
public final class Numbers {
  /** The space that never breaks a line. */
  public static final char BOUND = '\u00a0';

  private static final Pattern THOUSANDS = Pattern.compile("(?<![\\d.])(\\d{1,3})(\\d{3})(?!\\d)");
  private static final Pattern MEASURED =
      Pattern.compile(
          " (?<=\\d )(?=(?:W|V|A|mA|kV|mm|cm|m|s|ms|min|kg|ohm|kohm|L/min|A2s|A²s|percent|months?)\\b)");
  private static final Pattern PEAK = Pattern.compile(" (?<=\\bk?V )(?=peak\\b)");

  private Numbers() {}

  /** A quantity with its unit: {@code 2,000 V peak}. */
  public static String text(Quantity quantity) {
    return number(quantity.value()) + BOUND + unit(quantity);
  }

  /** The unit of a quantity as printed. */
  public static String unit(Quantity quantity) {
    return quantity.unit().replace("A2s", "A²s").replace(' ', BOUND);
  }

  /** A number without a unit. */
  public static String number(double value) {
    return THOUSANDS.matcher(Quantity.number(value)).replaceFirst("$1,$2");
  }

  /** A calculated number without a unit, to this many digits: {@code 0.00203} to three. */
  public static String digits(double value, int digits) {
    return number(new BigDecimal(value).round(new MathContext(digits)).doubleValue());
  }

  /** A short time as a manufacturer would write it: in milliseconds below one second. */
  public static String brief(Seconds time) {
    return time.value() < 1 ? digits(1000 * time.value(), 6) + BOUND + "ms" : text(time);
  }

  /** A whole number without a unit. */
  public static String count(int value) {
    return number(value);
  }

  /** Joins each number in an author's words to the unit after it. */
  public static String bind(String words) {
    String tied = MEASURED.matcher(words).replaceAll(String.valueOf(BOUND));
    return PEAK.matcher(tied).replaceAll(String.valueOf(BOUND));
  }
}
