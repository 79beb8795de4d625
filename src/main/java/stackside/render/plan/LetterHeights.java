package stackside.render.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The heights of letters in the cards' typeface, as shares of the em, measured on the outlines of
 * 'H' and 'x'. The font's own fields for these heights may be empty or wrong.
 *
 * @param capital the lower capital height of the two faces
 * @param small the lower x-height of the two faces
 */
public record LetterHeights(double capital, double small) {

  private static final String FOLDER = "/stackside/fonts/AtkinsonHyperlegibleNext-";
  private static final LetterHeights MEASURED = measure();

  /** The heights in the program's own fonts. */
  public static LetterHeights measured() {
    return MEASURED;
  }

  private static LetterHeights measure() {
    LetterHeights regular = read("Regular");
    LetterHeights bold = read("Bold");
    return new LetterHeights(
        Math.min(regular.capital, bold.capital), Math.min(regular.small, bold.small));
  }

  private static LetterHeights read(String face) {
    String resource = FOLDER + face + ".ttf";
    try (InputStream stream = LetterHeights.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its font " + resource);
      }
      try (TrueTypeFont font =
          new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()))) {
        double em = font.getUnitsPerEm();
        return new LetterHeights(height(font, "H") / em, height(font, "x") / em);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }

  private static double height(TrueTypeFont font, String letter) throws IOException {
    return font.getPath(letter).getBounds2D().getMaxY();
  }
}
