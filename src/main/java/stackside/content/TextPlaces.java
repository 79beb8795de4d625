package stackside.content;

import java.util.Arrays;
import java.util.stream.IntStream;
import stackside.source.Location;

/** Where a part of a Markdown text is in the file that the text comes from. */
interface TextPlaces {
  /** The place of the characters from {@code start} to {@code end} of the text. */
  Location of(int start, int end);

  /** A file that is Markdown as a whole. */
  static TextPlaces wholeFile(TextFile file) {
    return new LinedUp(file, file.text(), 1, 0);
  }

  /** A text that is the value of a key. */
  static TextPlaces inYaml(TextFile file, SourceNode.Scalar scalar) {
    int line = scalar.at().line();
    if (scalar.style() == SourceNode.Style.LITERAL) {
      return new LinedUp(file, scalar.text(), line + 1, indent(file, scalar, line + 1));
    }
    String source = file.source().line(line);
    int quote = scalar.style() == SourceNode.Style.QUOTED ? 1 : 0;
    int begin = scalar.at().column() - 1 + quote;
    if (scalar.style() != SourceNode.Style.FOLDED && source.startsWith(scalar.text(), begin)) {
      return new LinedUp(file, scalar.text(), line, begin);
    }
    return new Searched(file, scalar);
  }

  private static int indent(TextFile file, SourceNode.Scalar scalar, int firstLine) {
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
  final class LinedUp implements TextPlaces {
    private final TextFile file;
    private final int firstLine;
    private final int indent;
    private final int[] starts;
    private final int length;

    LinedUp(TextFile file, String text, int firstLine, int indent) {
      this.file = file;
      this.firstLine = firstLine;
      this.indent = indent;
      this.length = text.length();
      this.starts =
          IntStream.concat(
                  IntStream.of(0),
                  IntStream.range(0, text.length())
                      .filter(i -> text.charAt(i) == '\n')
                      .map(i -> i + 1))
              .toArray();
    }

    @Override
    public Location of(int start, int end) {
      int found = Arrays.binarySearch(starts, start);
      int line = found >= 0 ? found : -found - 2;
      int lineEnd = line + 1 < starts.length ? starts[line + 1] - 1 : length;
      return file.at(
          firstLine + line,
          Math.max(0, start - starts[line] + indent) + 1,
          Math.max(0, Math.min(end, lineEnd) - start));
    }
  }

  /** A text that YAML has folded. Its parts are found by their letters. */
  record Searched(TextFile file, SourceNode.Scalar scalar) implements TextPlaces {
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
