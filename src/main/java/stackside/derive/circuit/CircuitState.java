package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stackside.model.Electrode;
import stackside.model.Machine;
import stackside.model.PedalColour;
import stackside.model.Socket;

/**
 * Everything that decides what a pressed pedal delivers, and where.
 *
 * @param missing necessary supplies that are missing
 * @param selected absent if the machine has nothing selected, or never selects
 * @param occupants what is in the active sockets, in panel order
 * @param pedals the pedals available to press
 */
public record CircuitState(
    Machine machine,
    Set<Supply> missing,
    Program program,
    Optional<Socket> selected,
    SelectedBy selectedBy,
    List<Occupant> occupants,
    Optional<Electrode> neutralElectrode,
    NeutralState neutral,
    List<PedalColour> pedals) {

  public CircuitState {
    missing = Set.copyOf(missing);
    occupants = List.copyOf(occupants);
    pedals = List.copyOf(pedals);
  }

  /** The instruments in a socket. */
  public List<Occupant> in(Socket socket) {
    return occupants.stream().filter(each -> each.socket().id().equals(socket.id())).toList();
  }

  /** The instrument in hand, if it is plugged in. */
  public Optional<Occupant> inHand() {
    return occupants.stream().filter(each -> each.use() == Occupant.Use.IN_HAND).findFirst();
  }

  CircuitState with(Program other) {
    return new CircuitState(
        machine,
        missing,
        other,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        neutral,
        pedals);
  }

  CircuitState selecting(Optional<Socket> socket, SelectedBy how) {
    return new CircuitState(
        machine, missing, program, socket, how, occupants, neutralElectrode, neutral, pedals);
  }

  CircuitState holding(List<Occupant> others) {
    return new CircuitState(
        machine, missing, program, selected, selectedBy, others, neutralElectrode, neutral, pedals);
  }

  CircuitState adding(Occupant other) {
    List<Occupant> more = new ArrayList<>(occupants);
    more.add(other);
    return holding(more);
  }

  CircuitState with(NeutralState other) {
    return new CircuitState(
        machine,
        missing,
        program,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        other,
        pedals);
  }

  CircuitState without(Supply supply) {
    Set<Supply> more = EnumSet.of(supply);
    more.addAll(missing);
    return new CircuitState(
        machine, more, program, selected, selectedBy, occupants, neutralElectrode, neutral, pedals);
  }

  boolean lacks(Supply supply) {
    return missing.contains(supply);
  }
}
