package stackside.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.source.Location;
import stackside.source.Problem;

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

  /** The first quote that is never closed, or that something follows. */
  Optional<Problem> mistakeInQuotes() {
    CellPlaces walk = new CellPlaces(file);
    while (walk.next < file.text().length()) {
      Optional<Problem> mistake = walk.here('"') ? walk.quotedCell() : Optional.empty();
      if (mistake.isPresent()) {
        return mistake;
      }
      walk.cell();
      walk.more();
    }
    return Optional.empty();
  }

  private Optional<Problem> quotedCell() {
    Location open = file.at(line, next - lineStart + 1, 1);
    if (!skipQuoted()) {
      return Optional.of(
          ReadingFaults.NOT_CSV
              .at(open, "a double quote is opened here and never closed")
              .help("close it, or write each double quote inside a text twice"));
    }
    if (next < file.text().length() && !here(',') && !here('\n')) {
      return Optional.of(
          ReadingFaults.NOT_CSV
              .at(file.at(line, next - lineStart + 1, 1), "text follows a closing double quote")
              .help(
                  "put the whole text in double quotes, and write each double quote inside it twice"));
    }
    return Optional.empty();
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

  /** Moves past the closing quote, if there is one. */
  private boolean skipQuoted() {
    step();
    while (next < file.text().length()) {
      boolean quote = here('"');
      step();
      if (quote && !here('"')) {
        return true;
      }
      if (quote) {
        step();
      }
    }
    return false;
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
