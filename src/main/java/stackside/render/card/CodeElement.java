package stackside.render.card;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.render.Ink;
import stackside.render.Shape;
import stackside.render.plan.Block;
import stackside.render.plan.CardFaults;
import stackside.source.Problem;

/**
 * The QR code at the bottom right, its dark modules drawn as one path. It is designed for scanning
 * from 300 to 400 mm: at least 30 mm wide, modules at least 0.8 mm, four modules clear on every
 * side.
 */
final class CodeElement implements CardElement {

  static final double LEAST_WIDTH = 30;
  static final double LEAST_MODULE = 0.8;
  static final int QUIET = 4;

  /** The widest code that leaves room for the contacts beside it. */
  private static final double MOST_WIDTH = 34;

  private final Block.Code block;
  private final Optional<ByteMatrix> matrix;

  CodeElement(Block.Code block) {
    this.block = block;
    this.matrix =
        matrix(block.held(), ErrorCorrectionLevel.Q)
            .filter(CodeElement::fits)
            .or(() -> matrix(block.held(), ErrorCorrectionLevel.M))
            .filter(CodeElement::fits);
  }

  private static Optional<ByteMatrix> matrix(String address, ErrorCorrectionLevel level) {
    try {
      Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
      QRCode code = Encoder.encode(address, level, hints);
      return Optional.of(code.getMatrix());
    } catch (WriterException e) {
      return Optional.empty();
    }
  }

  private static boolean fits(ByteMatrix matrix) {
    return matrix.getWidth() * LEAST_MODULE <= MOST_WIDTH;
  }

  private double module() {
    return matrix
        .map(each -> Math.max(LEAST_MODULE, LEAST_WIDTH / each.getWidth()))
        .orElse(LEAST_MODULE);
  }

  /** The width of the symbol alone. */
  double width() {
    return matrix.map(each -> each.getWidth() * module()).orElse(LEAST_WIDTH);
  }

  /** The width of the clear zone around it. */
  double quiet() {
    return QUIET * module();
  }

  @Override
  public double height() {
    return width();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    double x = CardStyle.RIGHT - width();
    PdfStructureElement figure =
        canvas.figure(document, "QR code: " + block.address().words(), x, y, width(), width());
    matrix.ifPresent(each -> canvas.in(figure, () -> canvas.fill(runs(each, x, y))));
  }

  /** The dark modules; neighbours on a row become one rectangle. */
  private List<Shape.Rect> runs(ByteMatrix modules, double x, double y) {
    double module = module();
    Shape.Paint dark = Shape.Paint.fill(Ink.INK);
    List<Shape.Rect> runs = new ArrayList<>();
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        int start = column;
        while (column < modules.getWidth() && modules.get(column, row) == 1) {
          column++;
        }
        if (column > start) {
          runs.add(
              new Shape.Rect(
                  x + start * module,
                  y + row * module,
                  (column - start) * module,
                  module,
                  0,
                  dark));
        }
      }
    }
    return runs;
  }

  @Override
  public List<Problem> problems() {
    return matrix.isPresent()
        ? List.of()
        : List.of(
            CardFaults.ADDRESS_TOO_LONG_FOR_CODE
                .at(
                    block.address().at(),
                    "the address '"
                        + block.address().words()
                        + "' is too long for a code with modules of 0.8 mm")
                .help("serve the site under a shorter address"));
  }
}
