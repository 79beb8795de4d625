package stackside.model;

import java.util.regex.Pattern;

/** A person's initials. A name is refused: content holds no other personal data. */
public record Initials(String text) {
  /** The required form, in words. */
  public static final String FORM_IN_WORDS = "one to four capital letters";

  /** Letters of scripts without capitals count as capitals. */
  private static final Pattern FORM = Pattern.compile("[\\p{Lu}\\p{Lt}\\p{Lo}]{1,4}");

  public Initials {
    if (!are(text)) {
      throw new UnreadableText(
          "'" + text + "' are not initials", "write " + FORM_IN_WORDS + ", not a name");
    }
  }

  /**
   * Whether a text has the form of initials: one to four capitals, as is customary (common
   * practice, no source).
   */
  public static boolean are(String text) {
    return FORM.matcher(text).matches();
  }

  /** Reads initials from a cell. */
  public static Initials parse(String text) {
    return new Initials(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
