package stackside.content;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * A text without quotation marks that YAML does not read as its author meant it: a text in curly
 * marks, or one whose end YAML takes for a comment.
 */
final class LooseText {
  private static final int PROSE = 3;
  private static final Pattern COMMENT = Pattern.compile(" #.*");
  private static final Pattern CURLY =
      Pattern.compile("(?:[:\\[{,]|^ *-)\\s+([\u2018-\u201F])|[\\[{]([\u2018-\u201F])");
  private static final Pattern CURLY_CLOSING =
      Pattern.compile("([\u2018-\u201F])\\s*(?:[,}\\]]|$)");
  private static final Pattern HASH_IN_BRACKETS =
      Pattern.compile("[\\[{][^#]*[^\\s#,:\\[\\]{}] (#.*)");

  private LooseText() {}

  /**
   * What is wrong with such a text.
   *
   * @param end the place behind its last letter
   */
  static Optional<Problem> problem(TextFile file, SourceNode.Scalar text, Location end) {
    if (CurlyMarks.begin(text.text())) {
      return Optional.of(CurlyMarks.problem(text.at()));
    }
    String behind = file.source().line(end.line()).substring(end.column() - 1).stripTrailing();
    boolean cuts =
        COMMENT.matcher(behind).matches()
            && !text.text().isEmpty()
            && (behind.matches(" #[^\\s#].*") || text.text().split("\\s+").length >= PROSE);
    return cuts
        ? Optional.of(cut(file.at(end.line(), end.column() + 1, behind.length() - 1), behind))
        : Optional.empty();
  }

  private static Problem cut(Location at, String behind) {
    return ReadingFaults.TEXT_CUT_SHORT
        .at(at, Quote.of(behind.strip()) + " is not read, because '#' begins a comment")
        .help(
            "put the whole text in quotes if these words belong to it; if they are a comment,"
                + " leave two spaces before '# '");
  }

  /** What makes YAML complain about something else further on, if it is on these lines. */
  static Optional<Problem> culprit(TextFile file, List<Integer> lines) {
    return lines.stream().distinct().flatMap(line -> culprit(file, line)).findFirst();
  }

  private static Stream<Problem> culprit(TextFile file, int line) {
    String text = file.source().line(line);
    Matcher curly = CURLY.matcher(text);
    if (curly.find() && isOutsideQuotes(text, curly.end())) {
      int column = Math.max(curly.start(1), curly.start(2)) + 1;
      return Stream.of(CurlyMarks.problem(file.at(line, column, 1)));
    }
    Matcher closing = CURLY_CLOSING.matcher(text);
    if (closing.find() && !isOutsideQuotes(text, closing.start(1))) {
      return Stream.of(CurlyMarks.problem(file.at(line, closing.start(1) + 1, 1)));
    }
    Matcher hash = HASH_IN_BRACKETS.matcher(text);
    return hash.find() && isOutsideQuotes(text, hash.start(1))
        ? Stream.of(cut(file.toEndOfLine(line, hash.start(1) + 1), hash.group(1)))
        : Stream.empty();
  }

  private static boolean isOutsideQuotes(String line, int end) {
    return line.substring(0, end).chars().filter(each -> each == '"').count() % 2 == 0;
  }
}
