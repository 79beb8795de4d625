package stackside.content;

import stackside.source.Location;

/** Where a part of a Markdown text stands in the file that the text was read from. */
interface TextPlaces {
  /** The place of the characters from {@code start} to {@code end} of the text. */
  Location of(int start, int end);

  /** A file that is Markdown as a whole. */
  static TextPlaces wholeFile(TextFile file) {
    return new LinedUp(file, file.text(), 1, 0);
  }

  /** A text that is the value of a key. */
  static TextPlaces inYaml(TextFile file, Piece.Scalar scalar) {
    int line = scalar.at().line();
    if (scalar.style() == Piece.Style.LITERAL) {
      return new LinedUp(file, scalar.text(), line + 1, indent(file, scalar, line + 1));
    }
    String source = file.source().line(line);
    int quote = scalar.style() == Piece.Style.QUOTED ? 1 : 0;
    int begin = scalar.at().column() - 1 + quote;
    if (scalar.style() != Piece.Style.FOLDED && source.startsWith(scalar.text(), begin)) {
      return new LinedUp(file, scalar.text(), line, begin);
    }
    return new Searched(file, scalar);
  }

  private static int indent(TextFile file, Piece.Scalar scalar, int firstLine) {
    int line = firstLine;
    while (line < scalar.lastLine() && file.source().line(line).isBlank()) {
      line++;
    }
    String text = scalar.text().replaceFirst("^\\n+", "");
    return leadingSpaces(file.source().line(line)) - leadingSpaces(text);
  }

  private static int leadingSpaces(String line) {
    int count = 0;
    while (count < line.length() && line.charAt(count) == ' ') {
      count++;
    }
    return count;
  }

  /** Lines of the text are lines of the file, each moved to the right by the same amount. */
  record LinedUp(TextFile file, String text, int firstLine, int indent) implements TextPlaces {
    @Override
    public Location of(int start, int end) {
      int line = firstLine;
      int lineStart = 0;
      int next = text.indexOf('\n');
      while (next >= 0 && next < start) {
        line++;
        lineStart = next + 1;
        next = text.indexOf('\n', lineStart);
      }
      int until = next < 0 ? end : Math.min(end, next);
      return file.at(line, Math.max(0, start - lineStart + indent) + 1, Math.max(0, until - start));
    }
  }

  /** A text that YAML has folded: its parts are looked for by their letters. */
  record Searched(TextFile file, Piece.Scalar scalar) implements TextPlaces {
    @Override
    public Location of(int start, int end) {
      String part = scalar.text().substring(start, end);
      for (int line = scalar.at().line(); line <= scalar.lastLine(); line++) {
        int column = file.source().line(line).indexOf(part);
        if (column >= 0) {
          return file.at(line, column + 1, part.length());
        }
      }
      return scalar.at();
    }
  }
}
