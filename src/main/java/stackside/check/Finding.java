package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Note;
import stackside.source.Problem;

/**
 * What a rule finds at one place. Together with the rule's fault it is a {@link Problem}.
 *
 * @param at the smallest stretch of text that is wrong
 * @param message what is wrong, lower case, one line, no full stop, both values with their units
 * @param notes further places, in reading order
 * @param help the kind of edit that mends it; never a clinical number
 */
public record Finding(Location at, String message, List<Note> notes, Optional<String> help) {

  public Finding {
    notes = List.copyOf(notes);
  }

  /** What is wrong and where, with neither note nor help yet. */
  public static Finding at(Location at, String message) {
    return new Finding(at, message, List.of(), Optional.empty());
  }

  /** The same with one more place to look at. */
  public Finding note(Location where, String words) {
    List<Note> more = new ArrayList<>(notes);
    more.add(new Note(where, words));
    return new Finding(at, message, more, help);
  }

  /** The same with its kind of edit. */
  public Finding help(String words) {
    return new Finding(at, message, notes, Optional.of(words));
  }

  Problem of(Fault fault) {
    return new Problem(fault, at, message, notes, help);
  }
}
