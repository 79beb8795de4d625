package stackside.model;

import java.util.regex.Pattern;

/** The initials of a person; a name is refused, for the content holds no personal data beyond. */
public record Initials(String text) {
  private static final Pattern FORM = Pattern.compile("\\p{L}{1,5}");

  public Initials {
    if (!are(text)) {
      throw new UnreadableText(
          "'" + text + "' are no initials", "write one to five letters, and no name of a person");
    }
  }

  /** Whether a text has the form of initials: one to five letters. */
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
