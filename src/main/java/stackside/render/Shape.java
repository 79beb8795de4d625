package stackside.render;

import java.util.List;
import java.util.Optional;

/**
 * One element of a drawing. Lengths and coordinates are millimetres; x runs right and y down from
 * the top left corner of the drawing.
 */
public sealed interface Shape {

  /** A point on the drawing. */
  record Point(double x, double y) {}

  /** A line style: its colour, its width in millimetres, solid or dashed. */
  record Stroke(Ink ink, double width, Dash dash) {
    public static Stroke of(Ink ink, double width) {
      return new Stroke(ink, width, Dash.WHOLE);
    }

    public static Stroke dashed(Ink ink, double width) {
      return new Stroke(ink, width, Dash.DASHED);
    }
  }

  /** Whether a line is solid or dashed; dashes and gaps are four and three line widths long. */
  enum Dash {
    WHOLE,
    DASHED
  }

  /** How a closed shape is painted: outlined, filled, or both. */
  record Paint(Optional<Stroke> outline, Optional<Ink> fill) {
    public static Paint outline(Stroke stroke) {
      return new Paint(Optional.of(stroke), Optional.empty());
    }

    public static Paint fill(Ink ink) {
      return new Paint(Optional.empty(), Optional.of(ink));
    }

    public static Paint both(Stroke stroke, Ink fill) {
      return new Paint(Optional.of(stroke), Optional.of(fill));
    }
  }

  /** Lines through points, with round ends and corners. */
  record Polyline(List<Point> points, Stroke stroke) implements Shape {
    public Polyline {
      points = List.copyOf(points);
    }

    public static Polyline line(double x1, double y1, double x2, double y2, Stroke stroke) {
      return new Polyline(List.of(new Point(x1, y1), new Point(x2, y2)), stroke);
    }
  }

  /** A closed shape with straight sides. */
  record Polygon(List<Point> points, Paint paint) implements Shape {
    public Polygon {
      points = List.copyOf(points);
    }
  }

  /** An upright rectangle with rounded corners; a radius of 0 gives sharp ones. */
  record Rect(double x, double y, double width, double height, double radius, Paint paint)
      implements Shape {}

  record Circle(double x, double y, double radius, Paint paint) implements Shape {}

  /**
   * One line of words.
   *
   * @param x where the words begin, are centred or end, depending on the anchor
   * @param y the base line
   * @param size the em in millimetres
   */
  record Words(double x, double y, String text, double size, Weight weight, Anchor anchor, Ink ink)
      implements Shape {}

  /** The font face of the words. */
  enum Weight {
    REGULAR,
    BOLD
  }

  /** Which point of the words their x refers to. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
