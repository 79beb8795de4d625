package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Weight;

/**
 * Draws a person lying on the back, seen from above, with a plate on the thigh and numbered places.
 * A sketch, not to scale: left of the drawing is the person's right.
 */
public final class BodyDrawing {

  /**
   * The content of the drawing.
   *
   * @param places what each number means, in the order of {@link Place}
   */
  public record Plan(String title, String caption, List<String> places) {
    public Plan {
      places = List.copyOf(places);
      if (places.size() != Place.values().length) {
        throw new IllegalArgumentException("not " + Place.values().length + " places: " + places);
      }
    }
  }

  /** A numbered place, in shares of the body's height from the middle and from the top. */
  public enum Place {
    SITE(0, 0.47),
    PLATE(-0.062, 0.63),
    KNEE(0.062, 0.755),
    HIP(0.085, 0.525),
    DEVICE(0.055, 0.25),
    MONITORING(-0.06, 0.22),
    ARM(-0.185, 0.45);

    private final double right;
    private final double down;

    Place(double right, double down) {
      this.right = right;
      this.down = down;
    }
  }

  private static final double[][] HALF = {
    {0.024, 0.135}, {0.028, 0.170}, {0.070, 0.180}, {0.110, 0.190}, {0.128, 0.215},
    {0.150, 0.330}, {0.172, 0.430}, {0.200, 0.520}, {0.205, 0.550}, {0.190, 0.560},
    {0.178, 0.535}, {0.150, 0.440}, {0.122, 0.350}, {0.100, 0.270}, {0.096, 0.340},
    {0.088, 0.420}, {0.098, 0.490}, {0.108, 0.550}, {0.104, 0.640}, {0.088, 0.740},
    {0.084, 0.800}, {0.068, 0.900}, {0.066, 0.945}, {0.078, 0.985}, {0.030, 0.985},
    {0.032, 0.900}, {0.030, 0.800}, {0.026, 0.740}, {0.016, 0.640}, {0.008, 0.570}
  };

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double em;

  private BodyDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.em = sheet.text();
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new BodyDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = pen.caption(plan.caption(), width) + em;
    boolean beside = width > 30 * em;
    double high = 34 * em;
    double middle = beside ? 9 * em : width / 2;
    pen.add(new Circle(middle, top + 0.075 * high, 0.062 * high, skin()));
    pen.add(new Polygon(outline(middle, top, high), skin()));
    plate(middle, top, high);
    double x = beside ? 19 * em : 0;
    double y = beside ? top + 2 * em : top + high + 1.2 * em;
    for (int i = 0; i < plan.places().size(); i++) {
      Place place = Place.values()[i];
      mark(i + 1, middle + place.right * high, top + place.down * high);
      mark(i + 1, x + 0.8 * em, y + 0.35 * em);
      double room = width - x - 2.2 * em;
      y =
          pen.block(x + 2.2 * em, y, room, plan.places().get(i), Weight.REGULAR, Ink.INK)
              + 0.9 * em;
    }
    double bottom = Math.max(y, top + high) + pen.thick();
    return new Drawing(plan.title(), description(), width, bottom, pen.shapes());
  }

  private Paint skin() {
    return Paint.both(pen.heavy(Ink.INK), Ink.SHADE);
  }

  private static List<Point> outline(double middle, double top, double high) {
    List<Point> points = new ArrayList<>();
    for (double[] point : HALF) {
      points.add(new Point(middle + point[0] * high, top + point[1] * high));
    }
    for (int i = HALF.length - 1; i >= 0; i--) {
      points.add(new Point(middle - HALF[i][0] * high, top + HALF[i][1] * high));
    }
    return points;
  }

  /** The plate lies across the thigh, with a long edge towards the place that is treated. */
  private void plate(double middle, double top, double high) {
    double wide = 0.076 * high;
    pen.add(
        new Rect(
            middle - 0.062 * high - wide / 2,
            top + 0.6 * high,
            wide,
            0.06 * high,
            0.3 * em,
            Paint.both(pen.heavy(Ink.INK), Ink.PAPER)));
    pen.addAll(
        Curves.arrow(
            new Point(middle - 0.006 * high, top + 0.5 * high),
            new Point(middle - 0.045 * high, top + 0.597 * high),
            0.35 * em,
            pen.heavy(Ink.INK)));
  }

  private void mark(int number, double x, double y) {
    pen.add(new Circle(x, y, 0.72 * em, Paint.both(pen.line(Ink.INK), Ink.PAPER)));
    pen.middle(x, y + pen.capital() / 2, String.valueOf(number), Weight.BOLD, Ink.INK);
  }

  private String description() {
    return Drawing.description(
        plan.caption(),
        IntStream.range(0, plan.places().size())
            .mapToObj(i -> (i + 1) + ": " + plan.places().get(i).replaceFirst("\\.$", "")));
  }
}
