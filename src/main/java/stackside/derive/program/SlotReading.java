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
 * @param rows one per pedal, in file order
 * @param endedBy the latest event since then, which makes the reading invalid
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

  /** The row of a pedal; the last one if a day has several. */
  public Optional<ProgramReading> pedal(PedalColour colour) {
    return rows.stream()
        .filter(row -> row.pedal().value() == colour)
        .reduce((earlier, later) -> later);
  }

  /** The row written last. */
  public ProgramReading lastRow() {
    return rows.get(rows.size() - 1);
  }
}
