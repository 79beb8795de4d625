package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.Electrode;
import stackside.model.Machine;
import stackside.model.PedalColour;
import stackside.model.Socket;

/**
 * Everything that decides what a pressed pedal brings out, and where.
 *
 * @param selected absent where the machine has nothing selected, or never selects
 * @param occupants what is in the active sockets, in the order of the panel
 * @param pedals the pedals there are to press
 */
public record CircuitState(
    Machine machine,
    Supply mains,
    Program program,
    Optional<Socket> selected,
    SelectedBy selectedBy,
    List<Occupant> occupants,
    Optional<Electrode> neutralElectrode,
    NeutralState neutral,
    Supply footSwitch,
    List<PedalColour> pedals,
    Supply argon) {

  public CircuitState {
    occupants = List.copyOf(occupants);
    pedals = List.copyOf(pedals);
  }

  /** What is in a socket, as far as it is an instrument. */
  public List<Occupant> in(Socket socket) {
    return occupants.stream().filter(each -> each.socket().id().equals(socket.id())).toList();
  }

  /** The instrument in hand, if it is plugged in at all. */
  public Optional<Occupant> inHand() {
    return occupants.stream().filter(each -> each.use() == Occupant.Use.IN_HAND).findFirst();
  }

  CircuitState with(Program other) {
    return new CircuitState(
        machine,
        mains,
        other,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        neutral,
        footSwitch,
        pedals,
        argon);
  }

  CircuitState selecting(Optional<Socket> socket, SelectedBy how) {
    return new CircuitState(
        machine,
        mains,
        program,
        socket,
        how,
        occupants,
        neutralElectrode,
        neutral,
        footSwitch,
        pedals,
        argon);
  }

  CircuitState holding(List<Occupant> others) {
    return new CircuitState(
        machine,
        mains,
        program,
        selected,
        selectedBy,
        others,
        neutralElectrode,
        neutral,
        footSwitch,
        pedals,
        argon);
  }

  CircuitState adding(Occupant other) {
    List<Occupant> more = new ArrayList<>(occupants);
    more.add(other);
    return holding(more);
  }

  CircuitState with(NeutralState other) {
    return new CircuitState(
        machine,
        mains,
        program,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        other,
        footSwitch,
        pedals,
        argon);
  }

  CircuitState withoutMains() {
    return new CircuitState(
        machine,
        Supply.MISSING,
        program,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        neutral,
        footSwitch,
        pedals,
        argon);
  }

  CircuitState withoutFootSwitch() {
    return new CircuitState(
        machine,
        mains,
        program,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        neutral,
        Supply.MISSING,
        pedals,
        argon);
  }

  CircuitState withoutArgon() {
    return new CircuitState(
        machine,
        mains,
        program,
        selected,
        selectedBy,
        occupants,
        neutralElectrode,
        neutral,
        footSwitch,
        pedals,
        Supply.MISSING);
  }
}
