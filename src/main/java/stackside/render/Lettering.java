package stackside.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Measures words in the typeface of pages and cards, so that drawings can break lines themselves.
 * Read once from the program's font; kerning is ignored.
 */
final class Lettering {
  /** Height of a capital in em, measured on the outline of H. */
  static final double CAPITAL = 0.668;

  /** Distance between base lines, in em. */
  static final double PITCH = 1.3;

  private static final String FOLDER = "/stackside/fonts/AtkinsonHyperlegibleNext-";
  private static final int LETTERS = 0x2600;
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Lettering REGULAR = read("Regular");
  private static final Lettering BOLD = read("Bold");

  /**
   * Advance widths by code point, in em; a missing letter takes the width of the font's substitute.
   */
  private final double[] advances;

  private Lettering(double[] advances) {
    this.advances = advances;
  }

  static Lettering of(Shape.Weight weight) {
    return switch (weight) {
      case REGULAR -> REGULAR;
      case BOLD -> BOLD;
    };
  }

  private static Lettering read(String face) {
    String resource = FOLDER + face + ".ttf";
    try (InputStream stream = Lettering.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its font " + resource);
      }
      return read(stream.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }

  private static Lettering read(byte[] bytes) throws IOException {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes))) {
      double em = font.getUnitsPerEm();
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      double[] advances = new double[LETTERS];
      for (int letter = 0; letter < LETTERS; letter++) {
        int glyph = letter < ' ' ? 0 : glyphs.getGlyphId(letter);
        advances[letter] = font.getAdvanceWidth(glyph) / em;
      }
      return new Lettering(advances);
    }
  }

  /** The width of words on one line, in the unit of the size. */
  double width(String words, double size) {
    double ems = 0;
    for (int at = 0; at < words.length(); at += Character.charCount(words.codePointAt(at))) {
      int letter = words.codePointAt(at);
      ems += advances[letter < LETTERS ? letter : 0];
    }
    return size * ems;
  }

  /** Breaks words into lines no wider than this; a single word that is wider gets its own line. */
  List<String> lines(String words, double size, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    double used = 0;
    double space = width(" ", size);
    for (String word : words(words)) {
      double wide = width(word, size);
      if (line.length() > 0 && used + space + wide > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (line.length() > 0) {
        line.append(' ');
        used += space;
      }
      line.append(word);
      used += wide;
    }
    lines.add(line.toString());
    return List.copyOf(lines);
  }

  private static List<String> words(String text) {
    return List.of(SPACES.split(text.strip(), -1));
  }

  /** The width of the widest word. */
  double widestWord(String words, double size) {
    double widest = 0;
    for (String word : words(words)) {
      widest = Math.max(widest, width(word, size));
    }
    return widest;
  }
}
