package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Draws a lesion on the wall of the bowel in section, in a snare, once on the bare wall and once on
 * a cushion of fluid. It is a sketch and not to scale: it shows what lies between the wire and the
 * muscle.
 */
public final class WallDrawing {

  /** The content of the drawing. */
  public record Plan(String title, String caption, List<Panel> panels, Labels labels) {
    public Plan {
      panels = List.copyOf(panels);
    }
  }

  /**
   * One section.
   *
   * @param says what it shows
   * @param cushion whether there is fluid under the lesion
   */
  public record Panel(String name, String says, boolean cushion) {}

  /** The words in each section. */
  public record Labels(String wire, String bare, String fluid, String muscle, String heat) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double em;

  private WallDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.em = sheet.text();
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new WallDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = pen.caption(plan.caption(), width) + em;
    boolean beside = width > 40 * em;
    double wide = beside ? (width - 2 * em) / 2 : width;
    double left = 0;
    double bottom = top;
    for (Panel panel : plan.panels()) {
      double end = panel(panel, left, top, wide);
      bottom = Math.max(bottom, end);
      if (beside) {
        left += wide + 2 * em;
      } else {
        top = end + 1.5 * em;
      }
    }
    return new Drawing(plan.title(), description(), width, bottom + pen.thick(), pen.shapes());
  }

  private double panel(Panel panel, double left, double top, double wide) {
    double inner = wide - pen.thick();
    double y = pen.block(left, top, wide, panel.name(), Weight.BOLD, Ink.INK) + 0.4 * em;
    double room = 8.2 * em;
    double section = inner - room;
    double edge = left + pen.thin();
    double middle = edge + section / 2;
    double cushion = panel.cushion() ? 3.2 * em : 0.6 * em;
    double surface = y + 5.2 * em;
    double base = surface + 0.9 * em;
    double muscle = base + cushion;
    double end = muscle + 2.2 * em;
    double right = edge + section;
    band(edge, right, base, muscle, Ink.PAPER);
    band(edge, right, muscle, end, Ink.PAPER);
    fibres(edge, right, muscle, end);
    double reach = 3.1 * em;
    pen.add(new Polygon(lesion(middle, surface, reach), Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    band(edge, middle - reach, surface, base, Ink.SHADE);
    band(middle + reach, right, surface, base, Ink.SHADE);
    pen.add(new Rect(middle - reach, surface, 2 * reach, 0.9 * em, 0, Paint.fill(Ink.SHADE)));
    double neck = surface + 0.45 * em;
    pen.add(
        new Polygon(
            Curves.ellipse(middle, neck, 2.5 * em, 1.5 * em),
            Paint.outline(Stroke.dashed(Ink.INK, pen.thick()))));
    pen.add(new Shape.Circle(middle - reach, neck, 0.4 * em, Paint.fill(Ink.INK)));
    pen.add(new Shape.Circle(middle + reach, neck, 0.4 * em, Paint.fill(Ink.INK)));
    pen.add(
        Polyline.line(middle - reach, neck, middle + reach, neck, Stroke.of(Ink.INK, pen.thin())));
    Labels words = plan.labels();
    double x = right + 0.8 * em;
    double next = neck - 3.6 * em;
    next = label(x, next, room, new Point(middle + 1.4 * em, neck - 1.2 * em), words.heat());
    next = label(x, next, room, new Point(middle + reach + 0.4 * em, neck), words.wire());
    Point loose = new Point(right - 0.8 * em, base + cushion / 2);
    next = label(x, next, room, loose, panel.cushion() ? words.fluid() : words.bare());
    next = label(x, next, room, new Point(right - 0.8 * em, muscle + 1.1 * em), words.muscle());
    double below = Math.max(end, next) + 0.6 * em;
    return pen.block(left, below, wide, panel.says(), Weight.REGULAR, Ink.INK);
  }

  /** Words beside the section, level with what they name or below the words before them. */
  private double label(double x, double top, double room, Point to, String words) {
    double y = Math.max(top, to.y() - pen.capital() / 2);
    pen.add(Polyline.line(to.x(), to.y(), x - 0.3 * em, y + pen.capital() / 2, pen.line(Ink.INK)));
    return pen.block(x, y, room - 0.8 * em, words, Weight.REGULAR, Ink.INK) + 0.5 * em;
  }

  /** Muscle is hatched, so that what lies over it stays in sight. */
  private void fibres(double left, double right, double top, double bottom) {
    for (double x = left + 0.5 * em; x < right; x += 0.6 * em) {
      pen.add(Polyline.line(x, top, x, bottom, Stroke.of(Ink.GREY, pen.thin())));
    }
  }

  private void band(double left, double right, double top, double bottom, Ink fill) {
    pen.add(
        new Rect(left, top, right - left, bottom - top, 0, Paint.both(pen.line(Ink.INK), fill)));
  }

  private List<Point> lesion(double middle, double surface, double reach) {
    List<Point> points =
        new ArrayList<>(Curves.arc(middle, surface, 1.5 * reach, 3.6 * em, 180, 360));
    points.add(new Point(middle + reach, surface));
    points.add(new Point(middle - reach, surface));
    return points;
  }

  private String description() {
    return Drawing.description(
        plan.caption(), plan.panels().stream().map(panel -> panel.name() + ": " + panel.says()));
  }
}
