package stackside.derive.program;

import java.util.List;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.StoredProgram;

/**
 * Compares the last reading of a slot on an asset with one approved profile that uses that slot.
 *
 * @param reading absent where the slot was never read
 * @param mismatches empty if everything agrees or nothing was read
 * @param swappedWith the slot that holds this program, while this slot holds that slot's program
 */
public record ProgramCheck(
    Asset asset,
    Profile profile,
    Settings settings,
    StoredProgram program,
    Optional<SlotReading> reading,
    List<Mismatch> mismatches,
    Optional<Integer> swappedWith) {

  public ProgramCheck {
    mismatches = List.copyOf(mismatches);
  }

  /** The result of the check. */
  public enum Verdict {
    NEVER_READ,
    /** An event after the last reading has made it invalid. */
    NO_LONGER_COUNTS,
    DIFFERS,
    AGREES
  }

  public Verdict verdict() {
    if (reading.isEmpty()) {
      return Verdict.NEVER_READ;
    }
    if (!reading.get().counts()) {
      return Verdict.NO_LONGER_COUNTS;
    }
    return mismatches.isEmpty() ? Verdict.AGREES : Verdict.DIFFERS;
  }
}
