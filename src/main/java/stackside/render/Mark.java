package stackside.render;

import java.util.List;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Stroke;

/**
 * The shape drawn beside the word of a status. It says the same as the word without using colour,
 * and never appears alone.
 */
public enum Mark {
  /** Approved, in force, right. */
  DISC,
  /** Not approved, withdrawn. */
  SQUARE,
  /** A gap: nobody has decided. */
  TRIANGLE,
  /** Nothing suggests that it is wrong. */
  DIAMOND,
  /** Something else becomes live. */
  FULL_DIAMOND,
  /** Noticeable without an alarm; not yet signed. */
  RING,
  /** The machine raises an alarm and delivers nothing. */
  BARRED_SQUARE;

  /** The shape, centred at a point, in a square of this size. */
  public List<Shape> at(double x, double y, double size) {
    double half = size / 2;
    Stroke heavy = Stroke.of(Ink.INK, size * 0.16);
    Stroke light = Stroke.of(Ink.INK, size * 0.1);
    return switch (this) {
      case DISC -> List.of(new Shape.Circle(x, y, half * 0.9, Paint.fill(Ink.INK)));
      case SQUARE -> List.of(square(x, y, half * 0.85, Paint.fill(Ink.INK)));
      case TRIANGLE ->
          List.of(
              new Shape.Polygon(
                  List.of(
                      new Point(x, y - half * 0.9),
                      new Point(x + half, y + half * 0.8),
                      new Point(x - half, y + half * 0.8)),
                  Paint.both(light, Ink.PAPER)));
      case DIAMOND -> List.of(diamond(x, y, half * 0.9, Paint.both(heavy, Ink.PAPER)));
      case FULL_DIAMOND -> List.of(diamond(x, y, half, Paint.fill(Ink.INK)));
      case RING -> List.of(new Shape.Circle(x, y, half * 0.8, Paint.both(light, Ink.PAPER)));
      case BARRED_SQUARE ->
          List.of(
              square(x, y, half * 0.8, Paint.both(light, Ink.PAPER)),
              Shape.Polyline.line(x - half * 0.45, y, x + half * 0.45, y, heavy));
    };
  }

  private static Shape square(double x, double y, double half, Paint paint) {
    return new Shape.Rect(x - half, y - half, 2 * half, 2 * half, 0, paint);
  }

  private static Shape diamond(double x, double y, double half, Paint paint) {
    return new Shape.Polygon(
        List.of(
            new Point(x, y - half),
            new Point(x + half, y),
            new Point(x, y + half),
            new Point(x - half, y)),
        paint);
  }
}
