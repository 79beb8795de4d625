package stackside.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * How much room words take in the typeface of pages and cards, so that drawings can break lines by
 * themselves. Read once from the font in the program; without kerning.
 */
final class Lettering {
  /** Height of a capital, in em; measured on the outline of H. */
  static final double CAPITAL = 0.668;

  /** The share of the em between base lines. */
  static final double PITCH = 1.3;

  private static final String FOLDER = "/stackside/fonts/AtkinsonHyperlegibleNext-";
  private static final Lettering REGULAR = read("Regular");
  private static final Lettering BOLD = read("Bold");

  private final Map<Integer, Double> advances;
  private final double unknown;

  private Lettering(Map<Integer, Double> advances, double unknown) {
    this.advances = Collections.unmodifiableMap(advances);
    this.unknown = unknown;
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
      Map<Integer, Double> advances = new TreeMap<>();
      for (int letter = ' '; letter < 0x2600; letter++) {
        int glyph = glyphs.getGlyphId(letter);
        if (glyph != 0) {
          advances.put(letter, font.getAdvanceWidth(glyph) / em);
        }
      }
      return new Lettering(advances, font.getAdvanceWidth(0) / em);
    }
  }

  /** The width of one line of words, in the unit of the size. */
  double width(String words, double size) {
    return size
        * words.codePoints().mapToDouble(letter -> advances.getOrDefault(letter, unknown)).sum();
  }

  /** The words in lines no wider than this; a single word that is wider stands alone. */
  List<String> lines(String words, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.strip().split(" +", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, size) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return List.copyOf(lines);
  }

  /** The width of the widest word. */
  double widestWord(String words, double size) {
    double widest = 0;
    for (String word : words.strip().split(" +", -1)) {
      widest = Math.max(widest, width(word, size));
    }
    return widest;
  }
}
