package stackside.render;

/**
 * How large a drawing is to be: its width, and the em of its words, both in millimetres. The same
 * drawing code serves a thumbnail, a page and a card.
 */
public record Sheet(double width, double text) {
  /** A page on a screen: words of 16 px on a drawing of 680 px. */
  public static final Sheet PAGE = new Sheet(180, 4.23);

  /** A page on a telephone. */
  public static final Sheet PHONE = new Sheet(84, 4.1);

  public Sheet {
    if (!(width > 0 && text > 0)) {
      throw new IllegalArgumentException("no such sheet: " + width + " mm, " + text + " mm");
    }
  }

  /** The millimetres of a size in points. */
  public static double millimetres(double points) {
    return points * 25.4 / 72;
  }
}
