package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.render.Shape.Anchor;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Draws a drill as a straight spine: the sign, the make-safe step in a heavy box, the checks with
 * large numbers, and finally whom to call. Every check that can mend the fault has one exit to the
 * side, and all exits lead to one place.
 */
public final class DrillChart {

  /**
   * The content of the chart.
   *
   * @param escalation what to do if nothing helped
   * @param words the chart's own words
   */
  public record Plan(
      String title,
      String sign,
      String makeSafe,
      List<Check> checks,
      String escalation,
      Words words) {
    public Plan {
      checks = List.copyOf(checks);
    }
  }

  /**
   * One check.
   *
   * @param mends whether it can mend the fault; a check for afterwards mends nothing
   */
  public record Check(String action, Optional<String> see, boolean mends) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double box;
  private final double rail;
  private final List<Double> exits = new ArrayList<>();

  private DrillChart(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.box = Math.min(0.7 * width, 27 * pen.text());
    this.rail = box + 0.55 * Math.min(width - box, 8 * pen.text());
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new DrillChart(plan, sheet).draw();
  }

  private Drawing draw() {
    double line = pen.thick();
    double y = terminator(line, plan.sign());
    y = makeSafe(arrow(y));
    y = arrow(y);
    for (int i = 0; i < plan.checks().size(); i++) {
      Check check = plan.checks().get(i);
      y = check(i + 1, check, y);
      y = check.mends() ? arrow(y, say("chart.not-mended")) : arrow(y);
    }
    double last = y;
    y = escalation(y);
    if (!exits.isEmpty()) {
      y = Math.max(y, carryOn(last));
    }
    return new Drawing(
        say("chart.title", plan.title()), description(), width, y + line, pen.shapes());
  }

  private String say(String key, Object... values) {
    return plan.words().say(key, values);
  }

  private double pad() {
    return 0.55 * pen.text();
  }

  private double gap() {
    return 1.5 * pen.text();
  }

  private double terminator(double top, String words) {
    return boxed(top, words, Weight.REGULAR, 1.4 * pen.text(), pen.heavy(Ink.INK));
  }

  private double makeSafe(double top) {
    return boxed(top, plan.makeSafe(), Weight.BOLD, 0, Stroke.of(Ink.INK, 0.3 * pen.text()));
  }

  private double escalation(double top) {
    return boxed(
        top,
        plan.escalation(),
        Weight.BOLD,
        1.4 * pen.text(),
        Stroke.of(Ink.INK, 0.3 * pen.text()));
  }

  /** Draws words in a box as wide as the spine; returns its lower edge. */
  private double boxed(double top, String words, Weight weight, double radius, Stroke stroke) {
    int frame = pen.here();
    double left = stroke.width() / 2;
    double inner = left + pad() + radius / 4;
    double end =
        pen.block(inner, top + pad() + 0.1 * pen.text(), box - 2 * inner, words, weight, Ink.INK);
    double bottom = end - pen.pitch() + pen.capital() + pad() + 0.1 * pen.text();
    pen.addAt(
        frame,
        new Shape.Rect(
            left,
            top,
            box - 2 * left,
            bottom - top,
            Math.min(radius, (bottom - top) / 2),
            Paint.both(stroke, Ink.PAPER)));
    return bottom;
  }

  private double arrow(double top) {
    double x = box / 2;
    double end = top + gap();
    pen.add(Shape.Polyline.line(x, top, x, end - 0.4 * pen.text(), pen.heavy(Ink.INK)));
    head(x, end, 0, 1);
    return end;
  }

  private double arrow(double top, String words) {
    double end = arrow(top);
    pen.words(
        box / 2 + 0.6 * pen.text(),
        top + gap() / 2 + pen.capital() / 2 - 0.1 * pen.text(),
        words,
        Weight.REGULAR,
        Ink.GREY);
    return end;
  }

  /** Draws an arrowhead with its tip at a point, facing right or down. */
  private void head(double x, double y, double right, double down) {
    double length = 0.65 * pen.text();
    double half = 0.3 * pen.text();
    pen.add(
        new Polygon(
            List.of(
                new Point(x, y),
                new Point(x - right * length - down * half, y - down * length - right * half),
                new Point(x - right * length + down * half, y - down * length + right * half)),
            Paint.fill(Ink.INK)));
  }

  /** Draws a check with its number and its exit; returns its lower edge. */
  private double check(int number, Check check, double top) {
    int frame = pen.here();
    double left = pen.thin() / 2;
    double size = 1.9 * pen.text();
    double words = left + pad() + Math.max(2.1 * pen.text(), numeral(number, size));
    double y =
        pen.block(
            words,
            top + pad() + 0.1 * pen.text(),
            box - words - pad(),
            check.action(),
            Weight.BOLD,
            Ink.INK);
    if (check.see().isPresent()) {
      y = pen.block(words, y, box - words - pad(), check.see().get(), Weight.REGULAR, Ink.INK);
    }
    double bottom =
        Math.max(
            y - pen.pitch() + pen.capital() + pad() + 0.1 * pen.text(),
            top + 2 * pad() + size * Lettering.CAPITAL);
    double middle = (top + bottom) / 2;
    pen.add(
        new Shape.Words(
            left + pad(),
            middle + size * Lettering.CAPITAL / 2,
            Integer.toString(number),
            size,
            Weight.BOLD,
            Anchor.START,
            Ink.INK));
    pen.addAt(
        frame,
        new Shape.Rect(
            left, top, box - 2 * left, bottom - top, 0, Paint.both(pen.line(Ink.INK), Ink.PAPER)));
    if (check.mends()) {
      pen.add(Shape.Polyline.line(box, middle, rail, middle, pen.line(Ink.INK)));
      exits.add(middle);
    }
    return bottom;
  }

  private double numeral(int number, double size) {
    return Lettering.of(Weight.BOLD).width(Integer.toString(number), size) + 0.7 * pen.text();
  }

  /** Draws the rail that collects all exits and leads down to where they end. */
  private double carryOn(double tip) {
    double from = exits.get(0);
    pen.add(Shape.Polyline.line(rail, from, rail, tip - 0.4 * pen.text(), pen.heavy(Ink.INK)));
    head(rail, tip, 0, 1);
    int frame = pen.here();
    double left = box + 0.7 * pen.text();
    double right = Math.min(width - pen.thick(), left + 9.6 * pen.text());
    double end =
        pen.block(
            left + pad(),
            tip + pad() + 0.1 * pen.text(),
            right - left - 2 * pad(),
            say("chart.carry-on"),
            Weight.BOLD,
            Ink.INK);
    double bottom = end - pen.pitch() + pen.capital() + pad() + 0.1 * pen.text();
    pen.addAt(
        frame,
        new Shape.Rect(
            left,
            tip,
            right - left,
            bottom - tip,
            Math.min(1.4 * pen.text(), (bottom - tip) / 2),
            Paint.both(pen.heavy(Ink.INK), Ink.PAPER)));
    return bottom;
  }

  private String description() {
    StringBuilder words = new StringBuilder();
    words.append(say("chart.sign", plan.sign())).append(' ');
    words.append(say("chart.make-safe", plan.makeSafe())).append(' ');
    for (int i = 0; i < plan.checks().size(); i++) {
      Check check = plan.checks().get(i);
      words.append(i + 1).append(". ").append(check.action());
      check.see().ifPresent(see -> words.append(": ").append(see));
      words.append(check.mends() ? "; " + say("chart.if-mended") : ".").append(' ');
    }
    return words.append(say("chart.end", plan.escalation())).toString();
  }
}
