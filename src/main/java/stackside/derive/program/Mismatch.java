package stackside.derive.program;

import java.util.Optional;
import stackside.model.PedalColour;
import stackside.model.Word;
import stackside.source.Location;

/**
 * One field in which a reading differs from the approved profile.
 *
 * @param pedal absent if the field concerns the whole program
 * @param approved as written in the profile; absent for an unassigned pedal or an omitted field
 * @param read as written in the reading; absent in the same cases
 */
public record Mismatch(
    Field field,
    Optional<PedalColour> pedal,
    Optional<String> approved,
    Optional<String> read,
    Location approvedAt,
    Location readAt) {

  /** What differs. */
  public enum Field implements Word {
    SHOWN_AS,
    SOCKET,
    /** The reading has no line for this pedal. */
    PEDAL_NOT_READ,
    MODE,
    LEVEL,
    LIMIT
  }
}
