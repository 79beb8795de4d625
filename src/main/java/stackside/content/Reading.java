package stackside.content;

import java.util.List;
import java.util.Optional;
import stackside.model.Unit;
import stackside.source.Problem;
import stackside.source.Sources;

/**
 * What came of reading a content folder: the unit, every mistake that was met on the way, and the
 * texts themselves, so that messages can show the lines they are about.
 *
 * @param unit absent only where {@code unit.yaml} itself cannot be used
 * @param problems sorted by file and line, each once
 */
public record Reading(Optional<Unit> unit, List<Problem> problems, Sources sources) {
  public Reading {
    problems = List.copyOf(problems);
  }
}
