package stackside.render;

/**
 * The apparent size of a letter, in minutes of arc. At least 16 for a capital, preferably 20 (ISO
 * 9241-303 as quoted by secondary readers; NUREG-0700 rev. 2, 1.3.1-4, read: at least 16).
 */
public record ViewingAngle(double arcMinutes) {

  public static final ViewingAngle LEAST = new ViewingAngle(16);

  public static final ViewingAngle PREFERRED = new ViewingAngle(20);

  /** The height that has this apparent size at a distance, in the unit of the distance. */
  public double height(double distance) {
    return 2 * distance * StrictMath.tan(StrictMath.toRadians(arcMinutes / 60) / 2);
  }

  /** The apparent size of a height at a distance, both in the same unit. */
  public static ViewingAngle of(double height, double distance) {
    return new ViewingAngle(
        StrictMath.toDegrees(2 * StrictMath.atan(height / (2 * distance))) * 60);
  }
}
