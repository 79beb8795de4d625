package stackside.derive.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.derive.output.Measured;
import stackside.model.Asset;
import stackside.model.Mode;
import stackside.model.ServiceEvent;
import stackside.model.Word;

/**
 * Where one mode of one asset stands with its output checks.
 *
 * @param last the checks of the latest day on which this mode was measured
 * @param endedBy the event since, after which they no longer count
 * @param dueBy the day by which it must be measured again
 */
public record OutputCheckStanding(
    Asset asset,
    Mode mode,
    List<Measured> last,
    Optional<ServiceEvent> endedBy,
    Optional<LocalDate> dueBy,
    State state) {

  public OutputCheckStanding {
    last = List.copyOf(last);
  }

  /** How a mode stands, worst first. */
  public enum State implements Word {
    OUT_OF_TOLERANCE,
    NEVER_CHECKED,
    NO_LONGER_COUNTS,
    OVERDUE,
    CHECKED
  }
}
