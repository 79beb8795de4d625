package stackside.render;

/**
 * The size of a drawing: its width and the em of its words, both in millimetres. The same code
 * draws thumbnails, pages and cards.
 */
public record Sheet(double width, double text) {
  /** A page on a screen: text of 16 px on a drawing 680 px wide. */
  public static final Sheet PAGE = new Sheet(180, 4.23);

  /** A page on a phone. */
  public static final Sheet PHONE = new Sheet(84, 4.1);

  public Sheet {
    if (!(width > 0 && text > 0)) {
      throw new IllegalArgumentException("no such sheet: " + width + " mm, " + text + " mm");
    }
  }

  /** Converts points to millimetres. */
  public static double millimetres(double points) {
    return points * 25.4 / 72;
  }
}
