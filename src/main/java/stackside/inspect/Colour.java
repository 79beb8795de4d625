package stackside.inspect;

import java.util.Locale;

/** A colour as painted, each part from 0 to 255. */
public record Colour(int red, int green, int blue) {

  public static final Colour WHITE = new Colour(255, 255, 255);

  /**
   * The contrast between two colours, 1 to 21. (WCAG 2.2, definitions of relative luminance, read,
   * and of contrast ratio, from memory.)
   */
  public double contrast(Colour other) {
    double one = luminance();
    double two = other.luminance();
    return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
  }

  private double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
  }

  /** How light it looks, 0 to 100: CIE L*, computed from the luminance. */
  public double lightness() {
    double y = luminance();
    return y <= 216.0 / 24389 ? y * 24389 / 27 : 116 * StrictMath.cbrt(y) - 16;
  }

  /** Whether it is a hue and not a shade of grey. */
  public boolean coloured() {
    int most = Math.max(red, Math.max(green, blue));
    int least = Math.min(red, Math.min(green, blue));
    return most - least > 24;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "#%02X%02X%02X", red, green, blue);
  }
}
