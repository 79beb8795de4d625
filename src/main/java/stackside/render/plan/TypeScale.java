package stackside.render.plan;

import stackside.model.ReadingDistance;
import stackside.render.ViewingAngle;

/**
 * The sizes of type on a card in points, derived from reading distances and the measured outlines
 * of the typeface. Type is never made smaller to fit.
 *
 * @param near instructions, values, labels
 * @param far identity, make-safe line, drill titles, telephone numbers
 * @param heading titles between the two
 * @param numeral programs, sockets and watts: the near tier at the preferred angle
 * @param small the footer
 */
public record TypeScale(double near, double far, double heading, double numeral, double small) {

  /**
   * Distance between base lines, in sizes of type. (Degani 1992, 9, as summarised: 25 to 33
   * percent.)
   */
  public static final double PITCH = 1.3;

  /** The same distance between two lines of the far tier. */
  public static final double FAR_PITCH = 1.25;

  /** Letters per line. (RNIB clear print, as reproduced: 60 to 70.) */
  public static final int LONGEST_LINE = 70;

  /** The least x-height in millimetres. (Degani 1992, 7, as summarised: 0.10 inch.) */
  private static final double SMALL_LETTER = 2.54;

  /** The least size, whatever the font. (CAP 676, as summarised.) */
  private static final double FLOOR = 10;

  private static final double BODY_FLOOR = 12;

  private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  public static TypeScale of(ReadingDistance distance) {
    LetterHeights letters = LetterHeights.measured();
    double capital = ViewingAngle.LEAST.height(distance.near().value().value()) / letters.capital();
    double small = SMALL_LETTER / letters.small();
    double near = Math.max(BODY_FLOOR, points(Math.max(capital, small)));
    double far =
        points(ViewingAngle.LEAST.height(distance.far().value().value()) / letters.capital());
    double largest = Math.max(near, far);
    double numeral =
        points(ViewingAngle.PREFERRED.height(distance.near().value().value()) / letters.capital());
    return new TypeScale(
        near, largest, Math.min(largest, tenth(near * 1.15)), Math.max(near, numeral), FLOOR);
  }

  private static double points(double em) {
    return tenth(em / MILLIMETRES_PER_POINT);
  }

  /** Rounds up to a tenth of a point. */
  private static double tenth(double points) {
    return Math.ceil(points * 10 - 1e-9) / 10;
  }
}
