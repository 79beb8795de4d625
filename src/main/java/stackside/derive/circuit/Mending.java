package stackside.derive.circuit;

import java.util.List;
import stackside.model.Drill;
import stackside.model.DrillCheck;

/**
 * A drill, and those of its checks that mend a fault.
 *
 * @param fits whether the drill's sign matches that of the fault
 */
public record Mending(Drill drill, List<DrillCheck> checks, boolean fits) {
  public Mending {
    checks = List.copyOf(checks);
  }
}
