package stackside.derive.handbook;

import java.util.List;
import stackside.model.Prose;
import stackside.model.ThingId;

/**
 * A numbered claim of a handbook page.
 *
 * @param number as the notes in the text give it
 * @param words what is claimed
 * @param sources the publications that support it
 * @param otherwise who says otherwise, and what
 */
public record Claim(int number, Prose words, List<ThingId> sources, Prose otherwise) {
  public Claim {
    sources = List.copyOf(sources);
  }

  /** Whether none of its cells is empty. */
  public boolean isComplete() {
    return !words.plain().isBlank() && !sources.isEmpty() && !otherwise.plain().isBlank();
  }
}
