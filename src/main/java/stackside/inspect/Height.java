package stackside.inspect;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes measured lengths in messages. */
final class Height {

  /** What rounding may take from a height, in millimetres. */
  static final double HAIR = 0.005;

  private Height() {}

  /** To a hundredth, with the unit. */
  static String words(double millimetres) {
    return number(millimetres) + " mm";
  }

  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
