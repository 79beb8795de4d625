package stackside.content;

import java.util.List;
import stackside.source.Location;
import stackside.source.SourceText;

/**
 * A content file as decoded: line ends are plain line feeds, and a byte order mark is gone.
 *
 * @param name relative to the content folder, with forward slashes
 */
record TextFile(String name, String text, SourceText source) {

  static TextFile of(String name, String text) {
    return new TextFile(name, text, new SourceText(name, List.of(text.split("\n", -1))));
  }

  /** A stretch of a line; lines and columns count from 1. */
  Location at(int line, int column, int length) {
    return new Location(name, line, column, length);
  }

  /** From a place to the end of the text on its line. */
  Location toEndOfLine(int line, int column) {
    int end = source.line(line).stripTrailing().length();
    return at(line, column, Math.max(0, end - column + 1));
  }

  /** The id that a file of one thing carries in its name. */
  String stem() {
    String last = name.substring(name.lastIndexOf('/') + 1);
    int dot = last.lastIndexOf('.');
    return dot < 0 ? last : last.substring(0, dot);
  }
}
