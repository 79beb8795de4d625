package stackside.render.plan;

import stackside.model.Fact;
import stackside.render.Numbers;
import stackside.source.Location;

/**
 * Words on a card and where in the content they come from. Words that are the program's own carry
 * the place of the thing that they stand beside.
 */
public record Phrase(String words, Location at) {

  /** An author's words, each number tied to its unit. */
  public static Phrase of(Fact<String> fact) {
    return of(fact.value(), fact.at());
  }

  /** Words with each number tied to its unit. */
  public static Phrase of(String words, Location at) {
    return new Phrase(Numbers.bind(words.strip().replaceAll("\\s+", " ")), at);
  }

  /** How many words a reader counts; a number and its unit are one. */
  public int length() {
    return words.isEmpty() ? 0 : words.split(" ", -1).length;
  }
}
