package stackside.content;

import java.util.regex.Pattern;
import stackside.source.Location;
import stackside.source.Problem;

/** A comma in a number where a point belongs. */
final class DecimalComma {
  private static final Pattern FORM = Pattern.compile("(?<![\\d,])(\\d+),(\\d+)(?![\\d,])");

  private DecimalComma() {}

  /** Whether a text holds a number with such a comma. */
  static boolean in(String text) {
    return FORM.matcher(text).find();
  }

  /** The problem with a number written so, whatever the file took it for. */
  static Problem problem(Location at, String written) {
    return ReadingFaults.NOT_A_QUANTITY
        .at(at, Quote.of(written) + " has a decimal comma")
        .help(
            "write "
                + Quote.of(FORM.matcher(written).replaceAll("$1.$2"))
                + ": a point, not a comma");
  }
}
