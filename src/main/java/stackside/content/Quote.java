package stackside.content;

import java.util.regex.Pattern;

/** A text as messages quote it: on one line, in quotes, shortened where it is long. */
final class Quote {
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final int LONGEST = 60;

  private Quote() {}

  static String of(String text) {
    String line = SPACES.matcher(text.strip()).replaceAll(" ");
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return "'" + line + "'";
    }
    return "'" + line.substring(0, line.offsetByCodePoints(0, LONGEST)).stripTrailing() + "…'";
  }
}
