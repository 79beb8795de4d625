package stackside.render.plan;

import stackside.model.Fact;
import stackside.render.Numbers;
import stackside.source.Location;

/**
 * Words on a card, and where in the content they come from. The program's own words carry the place
 * of the thing beside them.
 */
public record Phrase(String words, Location at) {

  /** An author's words, with each number joined to its unit. */
  public static Phrase of(Fact<String> fact) {
    return of(fact.value(), fact.at());
  }

  /** Words, with each number joined to its unit. */
  public static Phrase of(String words, Location at) {
    return new Phrase(Numbers.bind(words.strip().replaceAll("\\s+", " ")), at);
  }

  /** The number of words as a reader counts them; a number and its unit count as one. */
  public int length() {
    return words.isEmpty() ? 0 : words.split(" ", -1).length;
  }
}
