package stackside.render.card;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import stackside.render.Shape.Weight;

/**
 * The two faces of one document's typeface, embedded as subsets and measured on the outlines of
 * their letters. The name of a subset is derived from the document, not random.
 */
final class Typeface {

  static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  private static final String FOLDER = "/stackside/fonts/AtkinsonHyperlegibleNext-";

  private final BaseFont regular;
  private final BaseFont bold;

  private Typeface(BaseFont regular, BaseFont bold) {
    this.regular = regular;
    this.bold = bold;
  }

  /** The faces for one document. */
  static Typeface forDocument(String name) {
    return new Typeface(open("Regular", name), open("Bold", name));
  }

  private static BaseFont open(String face, String document) {
    String resource = FOLDER + face + ".ttf";
    try (InputStream stream = Typeface.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its font " + resource);
      }
      byte[] bytes = stream.readAllBytes();
      BaseFont font =
          BaseFont.createFont(face + ".ttf", BaseFont.IDENTITY_H, true, false, bytes, null);
      font.setIncludeCidSet(false); // a CIDSet that lists a subset fails PDF/A-2 and PDF/UA-1
      font.setSecureRandom(new Repeatable((face + document).hashCode()));
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }

  BaseFont face(Weight weight) {
    return switch (weight) {
      case REGULAR -> regular;
      case BOLD -> bold;
    };
  }

  /** The width of words on one line, in millimetres. */
  double width(String words, Weight weight, double points) {
    return face(weight).getWidthPoint(shown(words), (float) points) * MILLIMETRES_PER_POINT;
  }

  /** The letters of these words that the typeface lacks. They would silently not be printed. */
  String missing(String words) {
    StringBuilder missing = new StringBuilder();
    shown(words)
        .codePoints()
        .filter(letter -> !regular.charExists(letter) || !bold.charExists(letter))
        .distinct()
        .forEach(missing::appendCodePoint);
    return missing.toString();
  }

  /** The words as painted. Lines are already broken, so spaces need not be no-break spaces. */
  static String shown(String words) {
    return words.replace('\u00a0', ' ');
  }

  /** A source of randomness that is the same in every run. */
  private static final class Repeatable extends SecureRandom {
    private static final long serialVersionUID = 1L;
    private long state;

    Repeatable(int seed) {
      this.state = seed;
    }

    @Override
    public double nextDouble() {
      state = state * 6364136223846793005L + 1442695040888963407L;
      return (state >>> 11) * 0x1.0p-53;
    }
  }
}
