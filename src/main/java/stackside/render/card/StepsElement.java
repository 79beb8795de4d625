package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.render.Ink;
import stackside.render.Shape.Weight;
import stackside.render.plan.StepLine;
import stackside.source.Problem;

/** Numbered steps: what to do, a dotted leader, what to see. */
final class StepsElement implements CardElement {

  private static final double NUMBER = 9;
  private static final double GAP = 3;

  /** The leftmost place for the column of what to see, measured from the left edge. */
  private static final int FIRST_SEE = 90;

  private static final int LAST_SEE = 140;

  private final CardStyle setting;
  private final double see;
  private final List<MeasuredStep> rows;

  private record MeasuredStep(StepLine step, Paragraph action, Optional<Paragraph> see) {
    double height() {
      double lines = Math.max(action.height(), see.map(Paragraph::height).orElse(0.0));
      return lines + (boxed() ? 1.2 : 0);
    }

    boolean boxed() {
      return step.part() == StepLine.Part.MAKE_SAFE;
    }
  }

  StepsElement(List<StepLine> steps, CardStyle setting) {
    this.setting = setting;
    this.see = lowest(steps);
    this.rows = rows(steps, see);
  }

  /** The column position that makes the list lowest; of several, the leftmost. */
  private double lowest(List<StepLine> steps) {
    double best = FIRST_SEE;
    double lowest = Double.MAX_VALUE;
    for (int see = FIRST_SEE; see <= LAST_SEE; see++) {
      double height = height(rows(steps, see));
      if (height < lowest - 0.01) {
        best = see;
        lowest = height;
      }
    }
    return best;
  }

  private List<MeasuredStep> rows(List<StepLine> steps, double see) {
    return steps.stream().map(step -> row(step, see)).toList();
  }

  private MeasuredStep row(StepLine step, double see) {
    double width = step.see().isPresent() ? see - NUMBER - GAP : CardStyle.WIDTH - NUMBER - GAP;
    Paragraph action =
        step.part() == StepLine.Part.CHECK
            ? setting.near(step.action(), width)
            : setting.nearBold(step.action(), width);
    return new MeasuredStep(
        step, action, step.see().map(words -> setting.nearBold(words, CardStyle.WIDTH - see)));
  }

  @Override
  public double height() {
    return height(rows);
  }

  private static double height(List<MeasuredStep> rows) {
    return rows.stream().mapToDouble(MeasuredStep::height).sum();
  }

  @Override
  public int joints() {
    return rows.size() - 1;
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    PdfStructureElement list = Canvas.element(document, "L");
    double top = y;
    for (MeasuredStep row : rows) {
      paint(canvas, list, row, top);
      top += row.height() + loose;
    }
  }

  private void paint(Canvas canvas, PdfStructureElement list, MeasuredStep row, double top) {
    PdfStructureElement item = Canvas.element(list, "LI");
    double y = row.boxed() ? top + 0.6 : top;
    if (row.boxed()) {
      double high = row.height();
      canvas.artifact(
          () -> canvas.box(CardStyle.LEFT + 0.45, top + 0.1, CardStyle.WIDTH - 0.9, high - 0.2, 0.9));
    }
    canvas.in(
        Canvas.element(item, "Lbl"),
        () ->
            canvas.words(
                CardStyle.LEFT + 2.2,
                y + row.action().base(0),
                row.step().number() + " ",
                Weight.BOLD,
                setting.scale().near(),
                Ink.INK));
    PdfStructureElement body = Canvas.element(item, "LBody");
    canvas.in(body, () -> row.action().paint(canvas, CardStyle.LEFT + NUMBER, y));
    row.see().ifPresent(words -> see(canvas, body, row, words, y));
  }

  private void see(Canvas canvas, PdfStructureElement body, MeasuredStep row, Paragraph words, double y) {
    double lower = row.action().lastBase() - row.action().base(0);
    double drop = words.lineCount() == 1 ? lower : 0;
    double from = CardStyle.LEFT + NUMBER + row.action().lastWidth() + 2.5;
    double to = CardStyle.LEFT + see - 2;
    if (drop == lower && to - from > 3) {
      canvas.artifact(() -> canvas.leader(from, to, y + row.action().lastBase() - 0.4));
    }
    canvas.in(body, () -> words.paint(canvas, CardStyle.LEFT + see, y + drop));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (MeasuredStep row : rows) {
      problems.addAll(row.action().problems());
      row.see().ifPresent(see -> problems.addAll(see.problems()));
    }
    return problems;
  }
}
