package stackside.model;

import java.util.regex.Pattern;

/** The initials of a person; a name is refused, for the content holds no personal data beyond. */
public record Initials(String text) {
  /** What initials are, in words. */
  public static final String FORM_IN_WORDS = "one to four capital letters";

  /** Letters of scripts without capitals count as such. */
  private static final Pattern FORM = Pattern.compile("[\\p{Lu}\\p{Lt}\\p{Lo}]{1,4}");

  public Initials {
    if (!are(text)) {
      throw new UnreadableText(
          "'" + text + "' are no initials", "write " + FORM_IN_WORDS + ", and no name of a person");
    }
  }

  /**
   * Whether a text has the form of initials: one to four capitals, as is the custom (common
   * practice, no source).
   */
  public static boolean are(String text) {
    return FORM.matcher(text).matches();
  }

  /** Reads initials as a cell holds them. */
  public static Initials parse(String text) {
    return new Initials(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
