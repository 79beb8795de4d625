package stackside.derive.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.PedalColour;
import stackside.model.ProgramReading;
import stackside.model.ServiceEvent;

/**
 * What one slot of one asset showed when it was last read.
 *
 * @param rows one a pedal, in the order of the file
 * @param endedBy the latest event since, after which the reading no longer counts
 */
public record SlotReading(
    Asset asset,
    int slot,
    LocalDate date,
    List<ProgramReading> rows,
    Optional<ServiceEvent> endedBy) {

  public SlotReading {
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a reading of slot " + slot + " without a row");
    }
  }

  /** Whether the reading still counts. */
  public boolean counts() {
    return endedBy.isEmpty();
  }

  /** The row of a pedal; the last one where a day has several. */
  public Optional<ProgramReading> pedal(PedalColour colour) {
    return rows.stream()
        .filter(row -> row.pedal().value() == colour)
        .reduce((earlier, later) -> later);
  }

  /** The row that was written last. */
  public ProgramReading lastRow() {
    return rows.get(rows.size() - 1);
  }
}
