package stackside.render;

import java.util.List;
import java.util.stream.Stream;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Weight;

/**
 * Draws what published scales say happens to tissue at which temperature: a scale in the middle,
 * one publication on each side. Distances grow with the logarithm, so that the crowded part has
 * room.
 */
public final class TemperatureDrawing {

  /** The content of the drawing. */
  public record Plan(String title, String caption, Side left, Side right) {}

  /** What one publication says. */
  public record Side(String source, List<Stage> stages) {
    public Side {
      stages = List.copyOf(stages);
    }
  }

  /**
   * One stage.
   *
   * @param celsius where it begins
   * @param says the temperature and what happens
   */
  public record Stage(double celsius, String says) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double em;
  private final double coldest;
  private final double hottest;

  private TemperatureDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.em = sheet.text();
    this.coldest = all().mapToDouble(Stage::celsius).min().orElse(1);
    this.hottest = all().mapToDouble(Stage::celsius).max().orElse(2);
  }

  private Stream<Stage> all() {
    return Stream.concat(plan.left().stages().stream(), plan.right().stages().stream());
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new TemperatureDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = pen.caption(plan.caption(), width) + em;
    double room = Math.min(width / 2 - 1.5 * em, 17 * em);
    double middle = room + 1.5 * em;
    double below =
        Math.max(
            pen.block(0, top, room, plan.left().source(), Weight.BOLD, Ink.INK),
            pen.block(middle + 1.5 * em, top, room, plan.right().source(), Weight.BOLD, Ink.INK));
    double high = 40 * em;
    double end = below + 1.4 * em + high;
    pen.add(Polyline.line(middle, end - high - em, middle, end + em, pen.heavy(Ink.INK)));
    plan.left().stages().forEach(stage -> stage(stage, 0, middle, -1, end, high, room));
    plan.right()
        .stages()
        .forEach(stage -> stage(stage, middle + 1.5 * em, middle, 1, end, high, room));
    return new Drawing(plan.title(), description(), width, end + 4.5 * em, pen.shapes());
  }

  private void stage(
      Stage stage, double x, double middle, int side, double end, double high, double room) {
    double share = StrictMath.log(stage.celsius() / coldest) / StrictMath.log(hottest / coldest);
    double y = end - share * high;
    pen.add(new Circle(middle, y, 0.3 * em, Paint.fill(Ink.INK)));
    pen.add(Polyline.line(middle, y, middle + side * 1.1 * em, y, pen.line(Ink.INK)));
    pen.block(x, y - pen.capital() / 2, room, stage.says(), Weight.REGULAR, Ink.INK);
  }

  private String description() {
    return Drawing.description(
        plan.caption(),
        Stream.of(plan.left(), plan.right())
            .flatMap(
                side -> side.stages().stream().map(stage -> side.source() + ": " + stage.says())));
  }
}
