package stackside.cli;

import java.util.List;
import stackside.source.Location;

/**
 * A line of the content as its author wrote it, with the part that a message is about underlined.
 * Of a very long line only what is near that part is shown.
 */
final class Excerpt {
  private static final int BEFORE = 60;
  private static final int WIDEST = 120;
  private static final String CUT = "…";

  private Excerpt() {}

  /** The two lines of an excerpt. */
  static List<String> of(Location at, String line) {
    int start = onCharacter(line, at.column() - 1);
    int end = onCharacter(line, start + at.length());
    boolean tooLong = line.length() > WIDEST;
    int from = tooLong ? onCharacter(line, Math.max(0, start - BEFORE)) : 0;
    int to = tooLong ? onCharacter(line, Math.min(line.length(), from + WIDEST)) : line.length();
    end = Math.min(end, to);

    Printable before = Printable.of((from > 0 ? CUT : "") + line.substring(from, start));
    Printable marked = Printable.startingAt(before.columns(), line.substring(start, end));
    Printable after =
        Printable.startingAt(
            before.columns() + marked.columns(),
            line.substring(end, to) + (to < line.length() ? CUT : ""));

    String number = String.valueOf(at.line());
    String shown = before.text() + marked.text() + after.text();
    return List.of(
        "  " + number + " | " + shown.stripTrailing(),
        "  "
            + " ".repeat(number.length())
            + " | "
            + " ".repeat(before.columns())
            + "^".repeat(Math.max(1, marked.columns())));
  }

  /** The index, no farther than the end of the line and never inside a character. */
  private static int onCharacter(String line, int index) {
    int inside = Math.min(index, line.length());
    boolean splits =
        inside > 0
            && inside < line.length()
            && Character.isSurrogatePair(line.charAt(inside - 1), line.charAt(inside));
    return splits ? inside - 1 : inside;
  }
}
