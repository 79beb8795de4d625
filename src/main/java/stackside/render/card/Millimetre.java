package stackside.render.card;

/** Formats a length for a message. */
final class Millimetre {
  private Millimetre() {}

  /** Whole millimetres, rounded up. */
  static String words(double millimetres) {
    return (long) Math.ceil(millimetres - 1e-6) + " mm";
  }
}
