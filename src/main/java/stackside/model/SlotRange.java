package stackside.model;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of a machine's stored programs, both ends included. */
public record SlotRange(int from, int to) {
  private static final Pattern FORM = Pattern.compile("(0|[1-9]\\d{0,3}) to (0|[1-9]\\d{0,3})");

  /**
   * Reads "1 to 20".
   *
   * @throws UnreadableText if the text is not such a range
   */
  public static SlotRange parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new UnreadableText(
          "'" + text + "' is not a range of program numbers", "write it in the form '1 to 20'");
    }
    int from = Integer.parseInt(form.group(1));
    int to = Integer.parseInt(form.group(2));
    if (from > to) {
      throw new UnreadableText("'" + text + "' runs backwards", "write the smaller number first");
    }
    return new SlotRange(from, to);
  }

  public boolean holds(int slot) {
    return from <= slot && slot <= to;
  }

  /** The range as an author writes it. */
  public String text() {
    return from + " to " + to;
  }
}
