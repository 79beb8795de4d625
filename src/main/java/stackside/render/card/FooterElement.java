package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.render.plan.TypeScale;
import stackside.source.Problem;

/** Edition, approval and review in the smallest type, with the address of the code. */
final class FooterElement implements CardElement {

  /** Lines needed by an issued edition; a draft keeps them free too. */
  private static final int LINES = 4;

  private final Paragraph words;
  private final Paragraph caption;
  private final double least;

  FooterElement(Block.Footer block, Block.Code code, CardStyle setting, double width) {
    Run[] runs =
        block.lines().stream()
            .map(line -> Run.regular(line, setting.scale().small()))
            .toArray(Run[]::new);
    words = setting.paragraph(width, runs);
    least = LINES * setting.scale().small() * TypeScale.PITCH * Typeface.MILLIMETRES_PER_POINT;
    caption =
        setting.paragraph(
            width,
            Run.bold(code.caption(), setting.scale().small()),
            Run.bold(code.address(), setting.scale().small()));
  }

  @Override
  public double height() {
    return Math.max(words.height(), least) + caption.height();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    canvas.in(Canvas.element(document, "P"), () -> words.paint(canvas, CardStyle.LEFT, y));
    canvas.in(
        Canvas.element(document, "P"),
        () -> caption.paint(canvas, CardStyle.LEFT, y + height() - caption.height()));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(words.problems());
    problems.addAll(caption.problems());
    return problems;
  }
}
