package stackside.derive.circuit;

import java.util.List;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.Condition;
import stackside.model.Drill;
import stackside.model.Evidence;
import stackside.model.Machine;
import stackside.model.Room;
import stackside.model.SingleFault;

/**
 * One line of the failure signs of a generator in a room, in the form of IEC 60812: item, failure,
 * local effect, sign, class, guard, mending.
 *
 * @param reach the local effect, at the instrument in hand
 * @param observed the sign
 * @param outcomes the individual outcomes that this line summarises
 * @param guards set-up steps that guard against the fault
 * @param drills drills that mend the fault, those whose sign fits first
 * @param fitting drills that have this sign, whether or not they mend the fault
 */
public record FailureSign(
    Room room,
    Asset asset,
    SingleFault fault,
    Reach reach,
    ReturnPath returnPath,
    Optional<Condition> condition,
    Observation observed,
    Optional<Evidence.Basis> evidence,
    OutcomeClass outcomeClass,
    List<FaultOutcome> outcomes,
    List<Guard> guards,
    List<Mending> drills,
    List<Drill> fitting) {

  public FailureSign {
    outcomes = List.copyOf(outcomes);
    guards = List.copyOf(guards);
    drills = List.copyOf(drills);
    fitting = List.copyOf(fitting);
  }

  /** What is seen at the tip; part of the sign. */
  public Tissue tissue() {
    return Tissue.of(reach);
  }

  public Item item() {
    return Item.of(fault);
  }

  public Machine machine() {
    return asset.machine().value();
  }
}
