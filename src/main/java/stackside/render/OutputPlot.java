package stackside.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import stackside.energy.LoadSpan;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;
import stackside.render.Shape.Anchor;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Draws what settings deliver into a load. The load axis is logarithmic, and each line has its name
 * at its end. The loads that receive full power are shaded, and 1,000 ohm, where tissue has dried,
 * is marked.
 */
public final class OutputPlot {
  private static final double DRIED = 1000;

  /** Below this width in em, a single line is named in the caption. */
  private static final double NARROW = 26;

  /** Several lines need at least this height in em to be distinguishable. */
  private static final double LEAST_HEIGHT = 11;

  private static final double[] TICKS = {10, 20, 50, 100, 200, 500, 1000, 2000, 5000};

  /**
   * One line: its name and its points by rising load.
   *
   * @param heavy the loads that receive full power, drawn heavier where several lines share a plot
   */
  public record Curve(String name, List<At> points, Optional<LoadSpan> heavy) {
    public Curve {
      points = List.copyOf(points);
    }

    public Curve(String name, List<At> points) {
      this(name, points, Optional.empty());
    }
  }

  /** A point on a line. */
  public record At(Ohms load, Watts power) {}

  /**
   * The content of the plot.
   *
   * @param fullPower the loads to shade
   * @param words the plot's own words
   */
  public record Plan(
      String title,
      LoadRange loads,
      List<Curve> curves,
      Optional<LoadSpan> fullPower,
      Words words) {
    public Plan {
      curves = List.copyOf(curves);
    }
  }

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double left;
  private final double right;
  private final double beside;
  private final double top;
  private final double bottom;
  private final double step;

  /** The top of the power axis: a round number at least as high as the highest power. */
  private final double most;

  private final boolean nameInCaption;

  private OutputPlot(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    double highest = highest(plan);
    this.step = step(highest);
    this.most = step * Math.ceil(highest / step);
    double label = pen.width(Numbers.number(most), Weight.REGULAR);
    double names =
        plan.curves().stream()
            .mapToDouble(curve -> pen.width(curve.name(), Weight.BOLD))
            .max()
            .orElse(0);
    this.left = label + 0.8 * pen.text();
    this.nameInCaption = plan.curves().size() == 1 && width < NARROW * pen.text();
    double beside = nameInCaption ? pen.text() : Math.min(names + 0.8 * pen.text(), 0.36 * width);
    this.right = width - beside;
    this.beside = beside - 0.6 * pen.text();
    this.top = (nameInCaption ? 3.4 : 2.5) * pen.text();
    double least = plan.curves().size() > 1 ? LEAST_HEIGHT * pen.text() : 0;
    this.bottom = top + Math.max(Math.min(0.62 * (right - left), 17 * pen.text()), least);
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new OutputPlot(plan, sheet).draw();
  }

  private String say(String key, Object... values) {
    return plan.words().say(key, values);
  }

  private Drawing draw() {
    String caption =
        nameInCaption ? say("plot.watts-at", plan.curves().get(0).name()) : say("plot.watts");
    pen.words(0, pen.capital() + pen.thin(), caption, Weight.REGULAR, Ink.INK);
    shade();
    powers();
    loads();
    dried();
    for (Curve curve : plan.curves()) {
      curve(curve);
    }
    if (!nameInCaption) {
      names();
    }
    return new Drawing(plan.title(), description(), width, bottom + 3.6 * pen.text(), pen.shapes());
  }

  private static double highest(Plan plan) {
    return plan.curves().stream()
        .flatMap(curve -> curve.points().stream())
        .mapToDouble(point -> point.power().value())
        .max()
        .orElse(1);
  }

  /** The step of the power axis: at most four steps, if round numbers allow. */
  private static double step(double highest) {
    return DoubleStream.of(1, 2, 5, 10, 20, 25, 50)
        .filter(step -> step * 4 >= highest)
        .findFirst()
        .orElse(100);
  }

  private double x(double load) {
    double from = StrictMath.log(plan.loads().from().value());
    double to = StrictMath.log(plan.loads().to().value());
    return left + (right - left) * (StrictMath.log(load) - from) / (to - from);
  }

  private double y(double power) {
    return bottom - (bottom - top) * power / most;
  }

  private void shade() {
    plan.fullPower()
        .ifPresent(
            span -> {
              double from = x(span.from().value());
              double to = x(span.to().value());
              pen.add(new Shape.Rect(from, top, to - from, bottom - top, 0, Paint.fill(Ink.SHADE)));
              if (to - from > pen.width(say("plot.full-power"), Weight.REGULAR) + pen.text()) {
                pen.middle(
                    (from + to) / 2,
                    bottom - 0.5 * pen.text(),
                    say("plot.full-power"),
                    Weight.REGULAR,
                    Ink.INK);
              }
            });
  }

  private void powers() {
    for (double power = 0; power <= most + 1e-9; power += step) {
      double y = y(power);
      pen.add(
          Shape.Polyline.line(
              left, y, right, y, Stroke.of(power == 0 ? Ink.INK : Ink.GREY, 0.04 * pen.text())));
      pen.add(
          new Shape.Words(
              left - 0.4 * pen.text(),
              y + pen.capital() / 2,
              Numbers.number(power),
              pen.text(),
              Weight.REGULAR,
              Anchor.END,
              Ink.INK));
    }
  }

  private void loads() {
    double base = bottom + 0.6 * pen.text() + pen.capital();
    double end = 0;
    for (double load : TICKS) {
      if (plan.loads().holds(new Ohms(load))) {
        double x = x(load);
        double half = pen.width(Numbers.number(load), Weight.REGULAR) / 2;
        pen.add(Shape.Polyline.line(x, bottom, x, bottom + 0.35 * pen.text(), pen.line(Ink.INK)));
        if (x - half > end) {
          pen.middle(x, base, Numbers.number(load), Weight.REGULAR, Ink.INK);
          end = x + half + 0.4 * pen.text();
        }
      }
    }
    String axis = say("plot.load");
    pen.middle(
        Math.max((left + right) / 2, pen.width(axis, Weight.REGULAR) / 2),
        base + pen.pitch(),
        axis,
        Weight.REGULAR,
        Ink.INK);
  }

  private void dried() {
    if (plan.loads().holds(new Ohms(DRIED))) {
      double x = x(DRIED);
      pen.add(
          Shape.Polyline.line(
              x, top - 0.3 * pen.text(), x, bottom, Stroke.dashed(Ink.INK, pen.thin())));
      pen.add(
          new Shape.Words(
              Math.min(x, right - 2.5 * pen.text()),
              top - 0.6 * pen.text(),
              say("plot.dry"),
              pen.text(),
              Weight.REGULAR,
              Anchor.MIDDLE,
              Ink.INK));
    }
  }

  private void curve(Curve curve) {
    List<Point> points =
        curve.points().stream()
            .map(point -> new Point(x(point.load().value()), y(point.power().value())))
            .toList();
    pen.add(new Shape.Polyline(points, Stroke.of(Ink.INK, 0.2 * pen.text())));
    curve.heavy().ifPresent(span -> heavy(curve, span));
  }

  /** Draws the heavy part of a line; a single load becomes a dot. */
  private void heavy(Curve curve, LoadSpan span) {
    List<Point> points =
        curve.points().stream()
            .filter(point -> span.holds(point.load()))
            .map(point -> new Point(x(point.load().value()), y(point.power().value())))
            .toList();
    if (points.size() == 1) {
      Point only = points.get(0);
      pen.add(new Shape.Circle(only.x(), only.y(), 0.4 * pen.text(), Paint.fill(Ink.INK)));
    } else {
      pen.add(new Shape.Polyline(points, Stroke.of(Ink.INK, 0.5 * pen.text())));
    }
  }

  /** Puts names at the ends of their lines and moves them apart where they would overlap. */
  private void names() {
    List<Curve> ordered = new ArrayList<>(plan.curves());
    ordered.removeIf(curve -> curve.points().isEmpty());
    ordered.sort(Comparator.comparingDouble(curve -> y(last(curve))));
    double needed = ordered.stream().mapToDouble(curve -> 1.2 * pen.text() * lines(curve)).sum();
    double next = top;
    double lowest = bottom - needed + 1.2 * pen.text();
    for (Curve curve : ordered) {
      double tall = 1.2 * pen.text() * lines(curve);
      double base = Math.max(y(last(curve)) + pen.capital() / 2, next);
      base = Math.min(base, lowest + pen.capital() / 2);
      for (String line : lettering().lines(curve.name(), pen.text(), beside)) {
        pen.words(right + 0.5 * pen.text(), base, line, Weight.BOLD, Ink.INK);
        base += 1.2 * pen.text();
      }
      lowest += tall;
      next = base;
    }
  }

  private int lines(Curve curve) {
    return lettering().lines(curve.name(), pen.text(), beside).size();
  }

  private static Lettering lettering() {
    return Lettering.of(Weight.BOLD);
  }

  private static double last(Curve curve) {
    return curve.points().get(curve.points().size() - 1).power().value();
  }

  private String description() {
    StringBuilder words = new StringBuilder();
    for (Curve curve : plan.curves()) {
      words.append(curve.name()).append(": ");
      if (!curve.points().isEmpty()) {
        At first = curve.points().get(0);
        At end = curve.points().get(curve.points().size() - 1);
        words.append(round(first)).append(", ").append(round(end)).append(". ");
        curve
            .heavy()
            .ifPresent(span -> words.append(say("plot.full-power-span", loads(span))).append(' '));
      }
    }
    plan.fullPower().ifPresent(span -> words.append(say("plot.full-power-span", loads(span))));
    return words.toString().strip();
  }

  private String loads(LoadSpan span) {
    String from = whole(span.from().value());
    String to = whole(span.to().value());
    return from.equals(to) ? say("plot.into", to) : say("plot.from-to", from, to);
  }

  private static String whole(double value) {
    return Numbers.number((double) Math.round(value));
  }

  private String round(At point) {
    return say("plot.point", whole(point.power().value()), whole(point.load().value()));
  }
}
