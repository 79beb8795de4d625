package stackside.energy;

/** An area through which current passes, in square centimetres. */
public record Area(double squareCentimetres) {

  public Area {
    if (!(squareCentimetres > 0) || Double.isInfinite(squareCentimetres)) {
      throw new IllegalArgumentException("no area: " + squareCentimetres);
    }
  }

  /** A round cross-section. */
  public static Area ofCircle(double diameterInCentimetres) {
    return new Area(StrictMath.PI / 4 * diameterInCentimetres * diameterInCentimetres);
  }

  /** A rectangle. */
  public static Area ofRectangle(double widthInCentimetres, double heightInCentimetres) {
    return new Area(widthInCentimetres * heightInCentimetres);
  }
}
