package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Lines in a box across the full width: the make-safe band, or the marks of a draft. */
final class BandElement implements CardElement {

  private final List<Paragraph> lines;
  private final double stroke;
  private final double pad;
  private final String role;

  private BandElement(List<Paragraph> lines, double stroke, double pad, String role) {
    this.lines = lines;
    this.stroke = stroke;
    this.pad = pad;
    this.role = role;
  }

  static BandElement makeSafe(Block.MakeSafe block, CardStyle setting) {
    double width = CardStyle.WIDTH - 10;
    return new BandElement(
        block.lines().stream().map(line -> setting.far(line, width)).toList(), 1.6, 0.1, "H2");
  }

  /** The marks, one after the other. */
  static BandElement marks(Block.Marks block, CardStyle setting) {
    Run[] runs =
        block.marks().stream()
            .map(mark -> Run.bold(mark, setting.scale().near()))
            .toArray(Run[]::new);
    return new BandElement(List.of(setting.paragraph(CardStyle.WIDTH - 10, runs)), 0.5, 0.2, "P");
  }

  @Override
  public double height() {
    return lines.stream().mapToDouble(Paragraph::height).sum() + 2 * (pad + stroke / 2);
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    double half = stroke / 2;
    canvas.artifact(
        () ->
            canvas.box(
                CardStyle.LEFT + half, y + half, CardStyle.WIDTH - stroke, height() - stroke, stroke));
    canvas.in(
        Canvas.element(document, role),
        () -> {
          double top = y + half + pad;
          for (Paragraph line : lines) {
            line.paint(canvas, CardStyle.LEFT + 5, top);
            top += line.height();
          }
        });
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    lines.forEach(line -> problems.addAll(line.problems()));
    return problems;
  }
}
