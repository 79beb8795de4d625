package stackside.render.card;

import java.util.ArrayList;
import java.util.List;
import stackside.render.Ink;
import stackside.render.Shape.Weight;
import stackside.render.plan.CardFaults;
import stackside.render.plan.TypeScale;
import stackside.source.Problem;

/**
 * Words broken into lines of a given width. Each line is as high as its largest type needs, with
 * the capitals in its middle. Type is never made smaller to fit.
 */
final class Paragraph {

  private final Typeface typeface;
  private final double width;
  private final double pitch;
  private final double capital;
  private final List<TextLine> lines = new ArrayList<>();

  /** Words of one face on one line; x is measured from the paragraph's left edge. */
  private record TextRun(String words, double x, Weight weight, double points, Run run) {}

  private static final class TextLine {
    private final List<TextRun> pieces = new ArrayList<>();
    private double width;
    private int letters;

    double points() {
      return pieces.stream().mapToDouble(TextRun::points).max().orElse(0);
    }
  }

  private Paragraph(CardStyle setting, double width, double pitch) {
    this.typeface = setting.typeface();
    this.capital = setting.letters().capital();
    this.width = width;
    this.pitch = pitch;
  }

  /** A paragraph of several runs in sequence. */
  static Paragraph of(CardStyle setting, double width, double pitch, Run... runs) {
    Paragraph paragraph = new Paragraph(setting, width, pitch);
    paragraph.lines.add(new TextLine());
    for (Run run : runs) {
      paragraph.add(run);
    }
    return paragraph;
  }

  /** The same paragraph with more words below it. */
  Paragraph thenOnNewLine(List<Run> runs) {
    lines.add(new TextLine());
    runs.forEach(this::add);
    return this;
  }

  private void add(Run run) {
    if (run.words().isEmpty()) {
      return;
    }
    for (String word : run.words().split(" +", -1)) {
      place(word, run);
    }
  }

  private void place(String word, Run run) {
    TextLine line = lines.get(lines.size() - 1);
    boolean first = line.pieces.isEmpty();
    double space = first ? 0 : typeface.width(" ", run.weight(), run.points());
    double wide = typeface.width(word, run.weight(), run.points());
    boolean fits =
        line.width + space + wide <= width
            && line.letters + 1 + word.length() <= TypeScale.LONGEST_LINE;
    if (!first && !fits) {
      line = new TextLine();
      lines.add(line);
      first = true;
      space = 0;
    }
    append(line, word, run, space, wide);
  }

  /** Adds a word to a line; joins it to the piece before if that belongs to the same run. */
  private void append(TextLine line, String word, Run run, double space, double wide) {
    int last = line.pieces.size() - 1;
    if (last >= 0 && line.pieces.get(last).run().equals(run)) {
      TextRun before = line.pieces.get(last);
      line.pieces.set(
          last,
          new TextRun(before.words() + " " + word, before.x(), run.weight(), run.points(), run));
    } else {
      line.pieces.add(new TextRun(word, line.width + space, run.weight(), run.points(), run));
    }
    line.width += space + wide;
    line.letters += word.length() + 1;
  }

  double height() {
    return lines.stream().mapToDouble(this::height).sum();
  }

  private double height(TextLine line) {
    return line.points() * pitch * Typeface.MILLIMETRES_PER_POINT;
  }

  int lineCount() {
    return lines.size();
  }

  double widest() {
    return lines.stream().mapToDouble(line -> line.width).max().orElse(0);
  }

  double lastWidth() {
    return lines.get(lines.size() - 1).width;
  }

  /** The base line of a line, measured from the paragraph's top. */
  double base(int index) {
    double top = lines.stream().limit(index).mapToDouble(this::height).sum();
    TextLine line = lines.get(index);
    double high = line.points() * capital * Typeface.MILLIMETRES_PER_POINT;
    return top + (height(line) + high) / 2;
  }

  double lastBase() {
    return base(lines.size() - 1);
  }

  /**
   * Paints the lines. Each line except the last ends in a space, so that a screen reader keeps
   * words apart.
   */
  void paint(Canvas canvas, double x, double y) {
    for (int i = 0; i < lines.size(); i++) {
      List<TextRun> pieces = lines.get(i).pieces;
      for (int j = 0; j < pieces.size(); j++) {
        TextRun piece = pieces.get(j);
        canvas.words(
            x + piece.x(),
            y + base(i),
            piece.words() + " ",
            piece.weight(),
            piece.points(),
            Ink.INK);
      }
    }
  }

  /** Words that are wider than the paragraph, and letters missing from the typeface. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (TextLine line : lines) {
      if (line.width > width + 0.01) {
        problems.add(tooWide(line));
      }
      for (TextRun piece : line.pieces) {
        missing(piece, problems);
      }
    }
    return problems;
  }

  private Problem tooWide(TextLine line) {
    TextRun piece = line.pieces.get(0);
    return CardFaults.WORDS_TOO_WIDE_FOR_CARD
        .at(
            piece.run().source().at(),
            "'"
                + Typeface.shown(piece.words())
                + "' is "
                + Millimetre.words(line.width - width)
                + " too wide for its space on the card")
        .help("use a shorter name");
  }

  private void missing(TextRun piece, List<Problem> problems) {
    String missing = typeface.missing(piece.words());
    if (!missing.isEmpty()) {
      problems.add(
          CardFaults.LETTER_NOT_IN_FONT
              .at(
                  piece.run().source().at(),
                  "the card typeface has no '" + missing + "', so it would be missing")
              .help("write it in words"));
    }
  }
}
