package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Stroke;

/** Round lines made of short straight ones, and arrows. */
final class Curves {
  private static final int STEPS = 48;

  private Curves() {}

  /**
   * Part of an ellipse.
   *
   * @param from where it begins, in degrees clockwise from the right
   */
  static List<Point> arc(double x, double y, double wide, double high, double from, double to) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double angle = StrictMath.toRadians(from + (to - from) * i / STEPS);
      points.add(new Point(x + wide * StrictMath.cos(angle), y + high * StrictMath.sin(angle)));
    }
    return points;
  }

  static List<Point> ellipse(double x, double y, double wide, double high) {
    return arc(x, y, wide, high, 0, 360);
  }

  /** A line that ends in a point. */
  static List<Shape> arrow(Point from, Point to, double size, Stroke stroke) {
    double length = StrictMath.hypot(to.x() - from.x(), to.y() - from.y());
    double right = (to.x() - from.x()) / length;
    double down = (to.y() - from.y()) / length;
    Point neck = new Point(to.x() - 2 * size * right, to.y() - 2 * size * down);
    return List.of(
        new Polyline(List.of(from, neck), stroke),
        new Polygon(
            List.of(
                to,
                new Point(neck.x() - size * down, neck.y() + size * right),
                new Point(neck.x() + size * down, neck.y() - size * right)),
            Paint.fill(stroke.ink())));
  }
}
