package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.render.Drawing;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** The front panel on the left, with the pedals beside it. */
final class MapsElement implements CardElement {

  private static final double GAP = 4;

  private final Block.Maps block;

  MapsElement(Block.Maps block) {
    this.block = block;
  }

  @Override
  public double height() {
    double pedals = block.pedals().stream().mapToDouble(each -> each.height() + GAP).sum() - GAP;
    return Math.max(block.sockets().height(), pedals);
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    drawing(canvas, document, block.sockets(), CardStyle.LEFT, y);
    double top = y;
    for (Drawing pedals : block.pedals()) {
      drawing(canvas, document, pedals, CardStyle.RIGHT - pedals.width(), top);
      top += pedals.height() + GAP;
    }
  }

  private static void drawing(
      Canvas canvas, PdfStructureElement document, Drawing drawing, double x, double y) {
    String words = drawing.title() + ". " + drawing.description();
    PdfStructureElement figure =
        canvas.figure(document, words, x, y, drawing.width(), drawing.height());
    canvas.in(figure, () -> drawing.shapes().forEach(shape -> canvas.shape(shape, x, y)));
  }

  @Override
  public List<Problem> problems() {
    return List.of();
  }
}
