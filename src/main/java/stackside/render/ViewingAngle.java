package stackside.render;

/**
 * How large a letter looks, in minutes of arc. 16 is the least for a capital and 20 preferred (ISO
 * 9241-303 as quoted by secondary readers; NUREG-0700 rev. 2, 1.3.1-4, read: at least 16).
 */
public record ViewingAngle(double arcMinutes) {

  public static final ViewingAngle LEAST = new ViewingAngle(16);

  public static final ViewingAngle PREFERRED = new ViewingAngle(20);

  /** The height that looks this large at a distance, in the unit of the distance. */
  public double height(double distance) {
    return 2 * distance * StrictMath.tan(StrictMath.toRadians(arcMinutes / 60) / 2);
  }

  /** How large a height looks at a distance, both in one unit. */
  public static ViewingAngle of(double height, double distance) {
    return new ViewingAngle(
        StrictMath.toDegrees(2 * StrictMath.atan(height / (2 * distance))) * 60);
  }
}
