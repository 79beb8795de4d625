package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.render.Shape.Point;
import stackside.render.Shape.Stroke;

/** The path of a cable or leader: straight horizontal and vertical runs with rounded corners. */
final class Route {
  private static final int PIECES = 6;

  private final List<Point> corners = new ArrayList<>();

  private Route(Point start) {
    corners.add(start);
  }

  static Route from(double x, double y) {
    return new Route(new Point(x, y));
  }

  Route down(double y) {
    return to(new Point(last().x(), y));
  }

  Route across(double x) {
    return to(new Point(x, last().y()));
  }

  private Route to(Point next) {
    if (distance(last(), next) > 1e-6) {
      corners.add(next);
    }
    return this;
  }

  private Point last() {
    return corners.get(corners.size() - 1);
  }

  /** The line, with its corners rounded as far as the lengths of the runs allow. */
  Shape.Polyline drawn(double radius, Stroke stroke) {
    List<Point> points = new ArrayList<>();
    points.add(corners.get(0));
    for (int i = 1; i < corners.size() - 1; i++) {
      bend(points, corners.get(i - 1), corners.get(i), corners.get(i + 1), radius);
    }
    points.add(last());
    return new Shape.Polyline(points, stroke);
  }

  private static void bend(List<Point> points, Point a, Point corner, Point b, double radius) {
    double turn = Math.min(radius, Math.min(distance(a, corner), distance(corner, b)) / 2);
    Point in = towards(corner, a, turn);
    Point out = towards(corner, b, turn);
    for (int piece = 0; piece <= PIECES; piece++) {
      double t = (double) piece / PIECES;
      double u = 1 - t;
      points.add(
          new Point(
              u * u * in.x() + 2 * u * t * corner.x() + t * t * out.x(),
              u * u * in.y() + 2 * u * t * corner.y() + t * t * out.y()));
    }
  }

  private static Point towards(Point from, Point to, double length) {
    double share = length / distance(from, to);
    return new Point(
        from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
  }

  private static double distance(Point a, Point b) {
    return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y());
  }
}
