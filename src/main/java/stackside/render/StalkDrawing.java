package stackside.render;

import java.util.List;
import stackside.quantity.Millimetres;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Weight;

/** Draws stalks from wide to thin, to scale. The height of the bar above each is its heating. */
public final class StalkDrawing {

  /** The content of the drawing. */
  public record Plan(String title, String caption, List<Bar> bars) {
    public Plan {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One stalk.
   *
   * @param heating relative to one of the stalks
   * @param says the heating in words
   */
  public record Bar(Millimetres diameter, double heating, String says) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;
  private final double column;
  private final double highest;
  private final double widest;

  private StalkDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.column = Math.min(width / plan.bars().size(), 8 * pen.text());
    this.highest = plan.bars().stream().mapToDouble(Bar::heating).max().orElse(1);
    this.widest = plan.bars().stream().mapToDouble(bar -> bar.diameter().value()).max().orElse(1);
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new StalkDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = pen.caption(plan.caption(), width);
    double ground = top + 1.4 * pen.text() + height();
    double discs = ground + 0.8 * pen.text() + diameter(widest) / 2;
    double names = discs + diameter(widest) / 2 + 0.5 * pen.text() + pen.capital();
    for (int i = 0; i < plan.bars().size(); i++) {
      Bar bar = plan.bars().get(i);
      double x = (i + 0.5) * column;
      double high = height() * bar.heating() / highest;
      double half = 0.24 * column;
      pen.add(new Rect(x - half, ground - high, 2 * half, high, 0, Paint.fill(Ink.INK)));
      pen.middle(x, ground - high - 0.4 * pen.text(), bar.says(), Weight.BOLD, Ink.INK);
      pen.add(
          new Circle(
              x,
              discs,
              diameter(bar.diameter().value()) / 2,
              Paint.both(pen.line(Ink.INK), Ink.SHADE)));
      pen.middle(x, names, Numbers.text(bar.diameter()), Weight.REGULAR, Ink.INK);
    }
    double end = column * plan.bars().size();
    pen.add(Polyline.line(0, ground, end, ground, pen.line(Ink.INK)));
    return new Drawing(plan.title(), description(), width, names + 0.5 * pen.text(), pen.shapes());
  }

  private double height() {
    return 11 * pen.text();
  }

  private double diameter(double millimetres) {
    return 0.78 * column * millimetres / widest;
  }

  private String description() {
    return Drawing.description(
        plan.caption(),
        plan.bars().stream().map(bar -> Numbers.text(bar.diameter()) + ": " + bar.says()));
  }
}
