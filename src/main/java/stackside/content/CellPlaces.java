package stackside.content;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Location;

/** Follows a CSV text cell by cell, so that a message can point at one of them. */
final class CellPlaces {
  private final TextFile file;
  private int next;
  private int line = 1;
  private int lineStart;

  CellPlaces(TextFile file) {
    this.file = file;
  }

  /** The places of the cells of the record that begins at or after a line. */
  List<Location> recordAt(int startLine) {
    while (line < startLine && next < file.text().length()) {
      step();
    }
    List<Location> cells = new ArrayList<>();
    do {
      cells.add(cell());
    } while (more());
    return cells;
  }

  private boolean more() {
    if (next >= file.text().length()) {
      return false;
    }
    boolean comma = file.text().charAt(next) == ',';
    step();
    return comma;
  }

  private Location cell() {
    int startLine = line;
    int column = next - lineStart + 1;
    if (here('"')) {
      skipQuoted();
    }
    while (next < file.text().length() && !here(',') && !here('\n')) {
      step();
    }
    return line == startLine
        ? file.at(startLine, column, next - lineStart + 1 - column)
        : file.toEndOfLine(startLine, column);
  }

  private void skipQuoted() {
    step();
    while (next < file.text().length()) {
      boolean quote = here('"');
      step();
      if (quote && !here('"')) {
        return;
      }
      if (quote) {
        step();
      }
    }
  }

  private boolean here(char wanted) {
    return next < file.text().length() && file.text().charAt(next) == wanted;
  }

  private void step() {
    if (here('\n')) {
      line++;
      lineStart = next + 1;
    }
    next++;
  }
}
