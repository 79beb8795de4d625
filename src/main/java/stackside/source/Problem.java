package stackside.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One mistake in the content: what is wrong, where, and what kind of edit fixes it. Stages collect
 * problems and pass them on; only the command line prints them.
 *
 * @param fault the kind of mistake
 * @param at the smallest stretch of text that is wrong
 * @param message what is wrong: one line, starting in lower case, no full stop, both values with
 *     their units
 * @param notes further places, in reading order
 * @param help the kind of edit that fixes it; never a clinical number
 */
public record Problem(
    Fault fault, Location at, String message, List<Note> notes, Optional<String> help)
    implements Comparable<Problem> {

  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::at)
          .thenComparing(problem -> problem.fault().id())
          .thenComparing(Problem::message);

  public Problem {
    notes = List.copyOf(notes);
  }

  /** Creates a problem that has neither note nor help yet. */
  public Problem(Fault fault, Location at, String message) {
    this(fault, at, message, List.of(), Optional.empty());
  }

  /** The same problem with another place to look at. */
  public Problem note(Location where, String words) {
    List<Note> more = new ArrayList<>(notes);
    more.add(new Note(where, words));
    return new Problem(fault, at, message, more, help);
  }

  /** The same problem with the kind of edit that fixes it. */
  public Problem help(String words) {
    return new Problem(fault, at, message, notes, Optional.of(words));
  }

  public Severity severity() {
    return fault.severity();
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }
}
