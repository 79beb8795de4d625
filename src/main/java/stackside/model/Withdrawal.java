package stackside.model;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * States that a record was wrong. The record stays legible in its place but no longer counts.
 *
 * @param by initials of the person who withdrew it
 */
public record Withdrawal(LocalDate date, Initials by, String reason) {
  private static final Pattern FORM = Pattern.compile("(\\S+)\\s+([^:\\s]+)\\s*:\\s*(\\S.*)");
  private static final String HINT =
      "write the date, the initials and the reason, as in: 2026-03-01 AB: read on the wrong generator";

  /** Reads {@code 2026-03-01 AB: read on the wrong generator}. */
  public static Withdrawal parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches() || !Initials.are(form.group(2))) {
      throw new UnreadableText(
          "'" + text + "' does not give the date, the initials and the reason", HINT);
    }
    try {
      return new Withdrawal(
          LocalDate.parse(form.group(1)), Initials.parse(form.group(2)), form.group(3));
    } catch (DateTimeException e) {
      throw new UnreadableText("'" + form.group(1) + "' is not a valid date", HINT);
    }
  }
}
