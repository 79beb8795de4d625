package stackside.render;

import java.util.List;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polygon;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Draws a polyp on a stalk between the two walls of the bowel: once with its head free, once with
 * the head against the far wall, which gives the current a second way. A sketch, not to scale.
 */
public final class FarWallDrawing {

  /** The content of the drawing. */
  public record Plan(String title, String caption, String wall, String far, List<Panel> panels) {
    public Plan {
      panels = List.copyOf(panels);
    }
  }

  /** One position of the head. */
  public record Panel(String name, String says, boolean touching) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double em;

  private FarWallDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.em = sheet.text();
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new FarWallDrawing(plan, sheet).draw();
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
    double y = pen.block(left, top, wide, panel.name(), Weight.BOLD, Ink.INK) + 0.6 * em;
    double wall = 2.2 * em;
    double lumen = 11 * em;
    double middle = left + wide / 2;
    double floor = y + wall + lumen;
    pen.add(
        new Rect(
            left + pen.thin(),
            y,
            wide - 2 * pen.thin(),
            wall,
            0,
            Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    pen.add(
        new Rect(
            left + pen.thin(),
            floor,
            wide - 2 * pen.thin(),
            wall,
            0,
            Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    pen.words(left + 0.6 * em, y + 1.45 * em, plan.far(), Weight.REGULAR, Ink.INK);
    pen.words(left + 0.6 * em, floor + 1.45 * em, plan.wall(), Weight.REGULAR, Ink.INK);
    double radius = 3.2 * em;
    double head = panel.touching() ? y + wall + radius - 0.3 * em : y + wall + 5 * em;
    double half = 0.9 * em;
    pen.add(
        new Polygon(
            List.of(
                new Point(middle - half, head),
                new Point(middle + half, head),
                new Point(middle + half, floor + pen.thin()),
                new Point(middle - half, floor + pen.thin())),
            Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    pen.add(new Circle(middle, head, radius, Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    double snare = (head + radius + floor) / 2;
    pen.add(
        new Polygon(
            Curves.ellipse(middle, snare, 1.15 * em, 0.35 * em),
            Paint.outline(Stroke.of(Ink.INK, 2 * pen.thick()))));
    double to = floor + wall - 0.2 * em;
    if (panel.touching()) {
      pen.addAll(
          Curves.arrow(
              new Point(middle, snare), new Point(middle, to), 0.4 * em, pen.line(Ink.INK)));
      pen.addAll(
          Curves.arrow(
              new Point(middle, snare - 0.6 * em),
              new Point(middle, y + 0.2 * em),
              0.4 * em,
              pen.line(Ink.INK)));
    } else {
      pen.addAll(
          Curves.arrow(
              new Point(middle, snare), new Point(middle, to), 0.5 * em, pen.heavy(Ink.INK)));
    }
    return pen.block(left, floor + wall + 0.9 * em, wide, panel.says(), Weight.REGULAR, Ink.INK);
  }

  private String description() {
    return Drawing.description(
        plan.caption(), plan.panels().stream().map(panel -> panel.name() + ": " + panel.says()));
  }
}
