package stackside.content;

import stackside.source.Location;
import stackside.source.Problem;

/** Curly quotation marks. Word processors write them, and in content they do not enclose a text. */
final class CurlyMarks {
  private static final String MARKS = "\u2018\u2019\u201A\u201B\u201C\u201D\u201E\u201F";

  private CurlyMarks() {}

  /** Whether a text begins with such a mark. */
  static boolean begin(String text) {
    return !text.isEmpty() && MARKS.indexOf(text.charAt(0)) >= 0;
  }

  /** Whether a text ends with such a mark. */
  static boolean end(String text) {
    return !text.isEmpty() && MARKS.indexOf(text.charAt(text.length() - 1)) >= 0;
  }

  static Problem problem(Location at) {
    return ReadingFaults.CURLY_QUOTATION_MARK
        .at(at, "there is a curly quotation mark here, where a straight one belongs")
        .help("put the text between straight quotation marks, \" or '");
  }
}
