package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Edition, approval and review in the smallest type, with the address of the code. */
final class FooterPiece implements Piece {

  private final Paragraph words;
  private final Paragraph caption;

  FooterPiece(Block.Footer block, Block.Code code, Setting setting, double width) {
    Run[] runs =
        block.lines().stream()
            .map(line -> Run.regular(line, setting.scale().small()))
            .toArray(Run[]::new);
    words = setting.paragraph(width, runs);
    caption =
        setting.paragraph(
            width,
            Run.bold(code.caption(), setting.scale().small()),
            Run.bold(code.address(), setting.scale().small()));
  }

  @Override
  public double height() {
    return words.height() + caption.height();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    canvas.in(Canvas.element(document, "P"), () -> words.paint(canvas, Setting.LEFT, y));
    canvas.in(
        Canvas.element(document, "P"),
        () -> caption.paint(canvas, Setting.LEFT, y + words.height()));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(words.problems());
    problems.addAll(caption.problems());
    return problems;
  }
}
