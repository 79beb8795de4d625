package stackside.derive.circuit;

import java.util.List;
import stackside.model.Drill;
import stackside.model.DrillCheck;

/**
 * A drill with the checks in it that mend a fault.
 *
 * @param fits whether the drill's sign is the sign of the fault
 */
public record Mending(Drill drill, List<DrillCheck> checks, boolean fits) {
  public Mending {
    checks = List.copyOf(checks);
  }
}
