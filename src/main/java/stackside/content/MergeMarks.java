package stackside.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * The lines that a version control program leaves around two versions of the same lines when it
 * cannot choose between them. A file with such a line holds both versions, so nothing in it is
 * certain.
 */
final class MergeMarks {
  private static final Pattern OPENING = Pattern.compile("<{7}( .*)?");
  private static final Pattern MIDDLE = Pattern.compile("={7}");
  private static final Pattern CLOSING = Pattern.compile(">{7}( .*)?");

  private final TextFile file;
  private final List<Problem> problems = new ArrayList<>();
  private Optional<Location> open = Optional.empty();

  private MergeMarks(TextFile file) {
    this.file = file;
  }

  /** One problem for each merge that somebody left unfinished. */
  static List<Problem> in(TextFile file) {
    MergeMarks marks = new MergeMarks(file);
    int number = 0;
    for (String line : file.source().lines()) {
      marks.read(line.stripTrailing(), ++number);
    }
    marks.endAt(Optional.empty());
    return marks.problems;
  }

  private void read(String line, int number) {
    Location at = file.toEndOfLine(number, 1);
    if (OPENING.matcher(line).matches()) {
      endAt(Optional.empty());
      open = Optional.of(at);
    } else if (CLOSING.matcher(line).matches()) {
      open = open.or(() -> Optional.of(at));
      endAt(Optional.of(at));
    } else if (open.isEmpty() && MIDDLE.matcher(line).matches() && !isMarkdown()) {
      open = Optional.of(at);
    }
  }

  /** In Markdown a line of equals signs makes a heading of the line above it. */
  private boolean isMarkdown() {
    return file.name().endsWith(".md");
  }

  private void endAt(Optional<Location> end) {
    open.ifPresent(
        start ->
            problems.add(
                ReadingFaults.UNFINISHED_MERGE
                    .at(start, "a merge was not finished here" + twoVersions(start, end))
                    .help("keep the right lines, and delete the others and every line of marks")));
    open = Optional.empty();
  }

  private static String twoVersions(Location start, Optional<Location> end) {
    return end.filter(last -> last.line() > start.line())
        .map(last -> ": both versions stand in the file, down to line " + last.line())
        .orElse("");
  }
}
