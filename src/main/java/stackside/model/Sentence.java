package stackside.model;

import java.util.Locale;
import java.util.regex.Pattern;

/** How words that an author wrote on their own stand within a sentence. */
public final class Sentence {

  /** A first word that keeps its capital: EMR, X-ray, T1, Barrett's. */
  private static final Pattern NAME =
      Pattern.compile(".[^\\p{Ll}].*|.*[\\p{Lu}\\d].*|.*(['’]s|s['’])");

  private Sentence() {}

  /** A title within a sentence: its first letter small, unless its first word is a name. */
  public static String within(String title) {
    if (title.length() < 2) {
      return title;
    }
    String first = title.substring(0, 1);
    String word = title.split("\\s", 2)[0];
    return NAME.matcher(first.toLowerCase(Locale.ROOT) + word.substring(1)).matches()
        ? title
        : first.toLowerCase(Locale.ROOT) + title.substring(1);
  }
}
