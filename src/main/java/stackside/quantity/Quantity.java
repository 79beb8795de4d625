package stackside.quantity;

import java.math.BigDecimal;

/** A number with its unit. The type gives the unit; the value is finite and in that unit. */
public sealed interface Quantity
    permits Amperes,
        AmpereSquaredSeconds,
        Kilograms,
        LitresPerMinute,
        Millimetres,
        Months,
        Ohms,
        Percent,
        Seconds,
        PeakVolts,
        Watts {

  /** The number, in the type's unit. */
  double value();

  /** The unit as written after the number. */
  String unit();

  /** Number, space and unit, without trailing zeros: {@code 0.8 L/min}. */
  default String text() {
    return number(value()) + " " + unit();
  }

  /** A number as a person writes it: no exponent, no trailing zero, a leading zero. */
  static String number(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
    return exact.signum() == 0 ? "0" : exact.toPlainString();
  }

  /** Refuses infinity and NaN; every quantity calls it. */
  static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
  }
}
