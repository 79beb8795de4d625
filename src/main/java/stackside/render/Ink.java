package stackside.render;

/**
 * The closed palette of drawings. Yellow and blue are reserved for pedals and sockets, which are
 * always outlined in ink and labelled with their word.
 */
public enum Ink {
  /** Lines and words. */
  INK(0x14, 0x17, 0x1a),
  /** Words and lines for unused things; 7:1 on paper. */
  GREY(0x4a, 0x50, 0x57),
  /** A background that distinguishes areas; never the only sign of anything. */
  SHADE(0xe9, 0xeb, 0xee),
  /** The background. */
  PAPER(0xff, 0xff, 0xff),
  YELLOW(0xff, 0xd4, 0x00),
  BLUE(0x1f, 0x6f, 0xc4);

  private final int red;
  private final int green;
  private final int blue;

  Ink(int red, int green, int blue) {
    this.red = red;
    this.green = green;
    this.blue = blue;
  }

  public int red() {
    return red;
  }

  public int green() {
    return green;
  }

  public int blue() {
    return blue;
  }

  /** The colour in SVG and CSS notation: {@code #14171a}. */
  public String hex() {
    return "#" + pair(red) + pair(green) + pair(blue);
  }

  private static String pair(int value) {
    return (value < 16 ? "0" : "") + Integer.toHexString(value);
  }
}
