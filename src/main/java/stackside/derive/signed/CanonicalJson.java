package stackside.derive.signed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Prints JSON in the one form of RFC 8785: no spaces, members sorted by UTF-16 units, numbers as
 * ECMAScript prints them. Equal values give equal bytes, so that bytes can be signed.
 */
public final class CanonicalJson {
  private static final int MOST_DIGITS = 17;

  private final StringBuilder text = new StringBuilder();

  private CanonicalJson() {}

  /** The canonical text. */
  public static String of(Json value) {
    CanonicalJson printer = new CanonicalJson();
    printer.print(value);
    return printer.text.toString();
  }

  /** The canonical text in UTF-8, which is what gets signed. */
  public static byte[] bytes(Json value) {
    return of(value).getBytes(StandardCharsets.UTF_8);
  }

  private void print(Json value) {
    if (value instanceof Json.Members members) {
      print(members);
    } else if (value instanceof Json.Items items) {
      print(items);
    } else if (value instanceof Json.Text words) {
      quote(words.value());
    } else if (value instanceof Json.Numeral number) {
      text.append(number(number.value()));
    } else if (value instanceof Json.Flag flag) {
      text.append(flag.value());
    } else if (value instanceof Json.Nothing) {
      text.append("null");
    } else {
      throw new IllegalStateException("no form for " + value);
    }
  }

  private void print(Json.Members members) {
    text.append('{');
    String comma = "";
    for (Map.Entry<String, Json> member : members.values().entrySet()) {
      text.append(comma);
      quote(member.getKey());
      text.append(':');
      print(member.getValue());
      comma = ",";
    }
    text.append('}');
  }

  private void print(Json.Items items) {
    text.append('[');
    String comma = "";
    for (Json item : items.values()) {
      text.append(comma);
      print(item);
      comma = ",";
    }
    text.append(']');
  }

  private void quote(String words) {
    text.append('"');
    for (int i = 0; i < words.length(); i++) {
      char unit = words.charAt(i);
      if (Character.isSurrogate(unit) && !startsOrEndsAPair(words, i)) {
        throw new IllegalArgumentException("half a surrogate pair has no canonical form");
      }
      escape(unit);
    }
    text.append('"');
  }

  private static boolean startsOrEndsAPair(String words, int at) {
    return Character.isHighSurrogate(words.charAt(at))
        ? at + 1 < words.length() && Character.isLowSurrogate(words.charAt(at + 1))
        : at > 0 && Character.isHighSurrogate(words.charAt(at - 1));
  }

  private void escape(char unit) {
    switch (unit) {
      case '"' -> text.append("\\\"");
      case '\\' -> text.append("\\\\");
      case '\b' -> text.append("\\b");
      case '\f' -> text.append("\\f");
      case '\n' -> text.append("\\n");
      case '\r' -> text.append("\\r");
      case '\t' -> text.append("\\t");
      default -> {
        if (unit < ' ') {
          text.append("\\u00")
              .append(unit < 16 ? "0" : "1")
              .append("0123456789abcdef".charAt(unit & 15));
        } else {
          text.append(unit);
        }
      }
    }
  }

  /** A number as ECMAScript prints it (ECMA-262, Number::toString with radix 10). */
  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    if (value < 0) {
      return "-" + number(-value);
    }
    BigDecimal shortest = shortest(value);
    String digits = shortest.unscaledValue().toString();
    int point = digits.length() - shortest.scale();
    if (point > 21 || point < -5) {
      String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
      String sign = point > 0 ? "+" : "-";
      return digits.charAt(0) + fraction + "e" + sign + Math.abs(point - 1);
    }
    if (point <= 0) {
      return "0." + "0".repeat(-point) + digits;
    }
    return point >= digits.length()
        ? digits + "0".repeat(point - digits.length())
        : digits.substring(0, point) + "." + digits.substring(point);
  }

  /** The fewest digits that still mean this double; among those the nearest to it. */
  private static BigDecimal shortest(double value) {
    BigDecimal exact = new BigDecimal(value);
    for (int digits = 1; digits < MOST_DIGITS; digits++) {
      Optional<BigDecimal> found = nearest(exact, value, digits);
      if (found.isPresent()) {
        return found.get().stripTrailingZeros();
      }
    }
    return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)).stripTrailingZeros();
  }

  private static Optional<BigDecimal> nearest(BigDecimal exact, double value, int digits) {
    return Stream.of(RoundingMode.HALF_EVEN, RoundingMode.DOWN, RoundingMode.UP)
        .map(mode -> exact.round(new MathContext(digits, mode)))
        .filter(rounded -> Double.compare(rounded.doubleValue(), value) == 0)
        .min(Comparator.comparing(rounded -> rounded.subtract(exact).abs()));
  }
}
