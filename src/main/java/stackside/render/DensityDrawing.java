package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.energy.Area;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Weight;

/**
 * Draws the areas that one current crosses, one below the other and to the same scale, with figures
 * beside each. The smaller the area, the darker it is.
 */
public final class DensityDrawing {
  private static final double LARGEST_SHARE = 0.34;

  /**
   * The content of the drawing: areas in the order in which the current meets them. The last one is
   * a rectangle.
   */
  public record Plan(String title, String caption, List<Stop> stops) {
    public Plan {
      stops = List.copyOf(stops);
    }
  }

  /**
   * One area.
   *
   * @param name where it is
   * @param numbers lines beside it
   */
  public record Stop(String name, List<String> numbers, Area area, Form form) {
    public Stop {
      numbers = List.copyOf(numbers);
    }

    /** The side or the diameter, in centimetres. */
    double centimetres() {
      return switch (form) {
        case ROUND -> 2 * StrictMath.sqrt(area.squareCentimetres() / StrictMath.PI);
        case SQUARE -> StrictMath.sqrt(area.squareCentimetres());
      };
    }
  }

  /** The outline of an area. */
  public enum Form {
    ROUND,
    SQUARE
  }

  private static final List<Ink> DARK_TO_LIGHT = List.of(Ink.INK, Ink.GREY, Ink.SHADE);

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double scale;
  private final double middle;

  private DensityDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    double widest = plan.stops().stream().mapToDouble(Stop::centimetres).max().orElse(1);
    double largest = Math.min(LARGEST_SHARE * width, 13 * pen.text());
    this.scale = largest / widest;
    this.middle = largest / 2 + pen.thin();
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new DensityDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = pen.caption(plan.caption(), width);
    List<Double> middles = new ArrayList<>();
    for (Stop stop : plan.stops()) {
      double height = Math.max(scale * stop.centimetres(), rowHeight(stop));
      middles.add(top + height / 2);
      words(stop, top, height);
      top += height + 0.9 * pen.text();
    }
    for (int i = plan.stops().size() - 1; i >= 0; i--) {
      area(plan.stops().get(i), middles.get(i), DARK_TO_LIGHT.get(Math.min(i, 2)));
      if (i == plan.stops().size() - 1) {
        current(middles.get(0), middles.get(i));
      }
    }
    return new Drawing(plan.title(), description(), width, top, pen.shapes());
  }

  private void area(Stop stop, double y, Ink fill) {
    double half = scale * stop.centimetres() / 2;
    Paint paint = Paint.both(pen.line(Ink.INK), fill);
    pen.add(
        switch (stop.form()) {
          case ROUND -> new Circle(middle, y, half, paint);
          case SQUARE -> new Rect(middle - half, y - half, 2 * half, 2 * half, 0, paint);
        });
  }

  /** Draws the path of the current, which ends in a point on the last area. */
  private void current(double first, double last) {
    double half = 0.35 * pen.text();
    pen.add(
        Polyline.line(
            middle, first - 1.6 * pen.text(), middle, last - 2 * half, pen.heavy(Ink.INK)));
    pen.add(
        new Polygon(
            List.of(
                new Point(middle, last),
                new Point(middle - half, last - 2 * half),
                new Point(middle + half, last - 2 * half)),
            Paint.fill(Ink.INK)));
  }

  private double left() {
    return 2 * middle + pen.text();
  }

  private double rowHeight(Stop stop) {
    return pen.pitch() * lines(stop);
  }

  private double lines(Stop stop) {
    double room = width - left();
    double lines = Lettering.of(Weight.BOLD).lines(stop.name(), pen.text(), room).size();
    for (String line : stop.numbers()) {
      lines += Lettering.of(Weight.REGULAR).lines(line, pen.text(), room).size();
    }
    return lines;
  }

  private void words(Stop stop, double top, double height) {
    double room = width - left();
    double y = top + (height - rowHeight(stop)) / 2 + (pen.pitch() - pen.capital()) / 2;
    y = pen.block(left(), y, room, stop.name(), Weight.BOLD, Ink.INK);
    for (String line : stop.numbers()) {
      y = pen.block(left(), y, room, line, Weight.REGULAR, Ink.INK);
    }
  }

  private String description() {
    return Drawing.description(
        plan.caption(),
        plan.stops().stream().map(stop -> stop.name() + ": " + String.join(", ", stop.numbers())));
  }
}
