package stackside.render;

import java.util.List;
import stackside.quantity.Millimetres;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Weight;

/**
 * Draws stalks from wide to thin, to scale. The bars above each are its heating: filled at the same
 * current, open at the same power.
 */
public final class StalkDrawing {

  /** The content of the drawing. */
  public record Plan(String title, String caption, String filled, String open, List<Bar> bars) {
    public Plan {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One stalk.
   *
   * @param filled heating at the same current, relative to one of the stalks
   * @param open heating at the same power, relative to the same one
   * @param says the first in words
   * @param saysOpen the second in words
   */
  public record Bar(
      Millimetres diameter, double filled, double open, String says, String saysOpen) {}

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
    this.highest = plan.bars().stream().mapToDouble(Bar::filled).max().orElse(1);
    this.widest = plan.bars().stream().mapToDouble(bar -> bar.diameter().value()).max().orElse(1);
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new StalkDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double top = legend(pen.caption(plan.caption(), width) + 0.8 * pen.text());
    double ground = top + 1.4 * pen.text() + height();
    double discs = ground + 0.8 * pen.text() + diameter(widest) / 2;
    double names = discs + diameter(widest) / 2 + 0.5 * pen.text() + pen.capital();
    for (int i = 0; i < plan.bars().size(); i++) {
      Bar bar = plan.bars().get(i);
      double x = (i + 0.5) * column;
      double wide = 0.3 * column;
      bar(x - 0.24 * column, ground, wide, bar.filled(), bar.says(), Paint.fill(Ink.INK));
      bar(
          x + 0.24 * column,
          ground,
          wide,
          bar.open(),
          bar.saysOpen(),
          Paint.both(pen.line(Ink.INK), Ink.SHADE));
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

  private void bar(double x, double ground, double wide, double value, String says, Paint paint) {
    double high = height() * value / highest;
    pen.add(new Rect(x - wide / 2, ground - high, wide, high, 0, paint));
    pen.middle(x, ground - high - 0.4 * pen.text(), says, Weight.BOLD, Ink.INK);
  }

  /** What the two kinds of bars mean; returns where it ends. */
  private double legend(double top) {
    double side = 0.8 * pen.text();
    pen.add(new Rect(pen.thin(), top, side, side, 0, Paint.fill(Ink.INK)));
    double next =
        pen.block(
                1.3 * pen.text(),
                top,
                width - 1.3 * pen.text(),
                plan.filled(),
                Weight.REGULAR,
                Ink.INK)
            + 0.5 * pen.text();
    pen.add(new Rect(pen.thin(), next, side, side, 0, Paint.both(pen.line(Ink.INK), Ink.SHADE)));
    return pen.block(
        1.3 * pen.text(), next, width - 1.3 * pen.text(), plan.open(), Weight.REGULAR, Ink.INK);
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
        plan.bars().stream()
            .map(
                bar ->
                    "%s: %s, %s; %s, %s"
                        .formatted(
                            Numbers.text(bar.diameter()),
                            plan.filled(),
                            bar.says(),
                            plan.open(),
                            bar.saysOpen())));
  }
}
