package stackside.inspect;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import stackside.render.OutputFile;

/**
 * Paints a fault over a finished card, with another library than the one that made it. Places are
 * millimetres from the top left corner.
 */
final class Overpaint {

  private static final float POINTS = 72 / 25.4f;
  private static final float HEIGHT = 297;

  /** Something to paint. */
  interface Fault {
    void paint(PDDocument document, PDPageContentStream content) throws IOException;
  }

  private Overpaint() {}

  /** The card with the fault on it. */
  static OutputFile with(OutputFile card, Fault fault) {
    try (PDDocument document = Loader.loadPDF(card.bytes())) {
      PDPage page = document.getPage(0);
      try (PDPageContentStream content =
          new PDPageContentStream(
              document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
        fault.paint(document, content);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return new OutputFile(card.path(), out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Words in the card's own typeface. */
  static Fault words(double x, double y, String words, double points) {
    return (document, content) ->
        words(
            content,
            font(document),
            words,
            points,
            Color.BLACK,
            Matrix.getTranslateInstance(px(x), py(y)));
  }

  static Fault words(double x, double y, String words, double points, Color colour) {
    return (document, content) ->
        words(
            content,
            font(document),
            words,
            points,
            colour,
            Matrix.getTranslateInstance(px(x), py(y)));
  }

  static Fault words(double x, double y, String words, double points, PDFont font) {
    return (document, content) ->
        words(content, font, words, points, Color.BLACK, Matrix.getTranslateInstance(px(x), py(y)));
  }

  static Fault turned(double x, double y, String words, double points) {
    return (document, content) ->
        words(
            content,
            font(document),
            words,
            points,
            Color.BLACK,
            Matrix.getRotateInstance(Math.PI / 2, px(x), py(y)));
  }

  static Fault fill(double x, double y, double width, double height, Color colour) {
    return (document, content) -> {
      content.setNonStrokingColor(colour);
      content.addRect(px(x), py(y + height), (float) width * POINTS, (float) height * POINTS);
      content.fill();
    };
  }

  static Fault both(Fault one, Fault other) {
    return (document, content) -> {
      one.paint(document, content);
      other.paint(document, content);
    };
  }

  private static void words(
      PDPageContentStream content,
      PDFont font,
      String words,
      double points,
      Color colour,
      Matrix place)
      throws IOException {
    content.beginText();
    content.setNonStrokingColor(colour);
    content.setFont(font, (float) points);
    content.setTextMatrix(place);
    content.showText(words);
    content.endText();
  }

  private static PDFont font(PDDocument document) throws IOException {
    try (InputStream stream =
        Overpaint.class.getResourceAsStream(
            "/stackside/fonts/AtkinsonHyperlegibleNext-Regular.ttf")) {
      return PDType0Font.load(document, stream, true);
    }
  }

  private static float px(double millimetres) {
    return (float) millimetres * POINTS;
  }

  private static float py(double millimetres) {
    return (float) (HEIGHT - millimetres) * POINTS;
  }
}
