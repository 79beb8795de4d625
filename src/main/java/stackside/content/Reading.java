package stackside.content;

import java.util.List;
import java.util.Optional;
import stackside.model.Unit;
import stackside.source.Problem;
import stackside.source.SheetRow;
import stackside.source.Sources;

/**
 * The result of reading a content folder: the unit, every mistake found on the way, and the texts
 * themselves, so that messages can show their lines.
 *
 * @param unit absent only if {@code unit.yaml} itself cannot be used
 * @param records the rows of readings, events and checks as written, whether or not they could be
 *     read
 * @param problems sorted by file and line, each once
 */
public record Reading(
    Optional<Unit> unit, List<Problem> problems, Sources sources, List<SheetRow> records) {
  public Reading {
    records = List.copyOf(records);
    problems = List.copyOf(problems);
  }
}
