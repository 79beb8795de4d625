package stackside.derive.circuit;

import java.util.List;
import stackside.model.Asset;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SingleFault;

/**
 * What happens to one approved answer in one room on one generator when one thing goes wrong.
 *
 * @param state the state including the fault
 * @param presses one for each pedal that the profile assigns
 */
public record FaultOutcome(
    Room room,
    Asset asset,
    Profile profile,
    Deviation deviation,
    CircuitState state,
    List<Press> presses) {

  public FaultOutcome {
    presses = List.copyOf(presses);
    if (presses.isEmpty()) {
      throw new IllegalArgumentException("no pedal to press in " + profile.id());
    }
  }

  public SingleFault fault() {
    return deviation.fault();
  }

  public Machine machine() {
    return asset.machine().value();
  }

  /** The press with the worst class; the first if several are equal. */
  public Press worst() {
    Press worst = presses.get(0);
    for (Press press : presses) {
      if (press.outcomeClass().compareTo(worst.outcomeClass()) < 0) {
        worst = press;
      }
    }
    return worst;
  }

  /** The class of the worst press. */
  public OutcomeClass outcomeClass() {
    return worst().outcomeClass();
  }
}
