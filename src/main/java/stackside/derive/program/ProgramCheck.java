package stackside.derive.program;

import java.util.List;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.StoredProgram;

/**
 * The last reading of a slot on an asset against one approved profile that uses that slot.
 *
 * @param reading absent where the slot was never read
 * @param mismatches empty where all agrees or nothing was read
 * @param swappedWith the slot that holds this program while this slot holds that one's
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

  /** How the check came out. */
  public enum Verdict {
    NEVER_READ,
    /** The last reading is older than an event that ends it. */
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
