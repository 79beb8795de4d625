package stackside.derive.circuit;

import java.util.List;
import stackside.model.Socket;

/** A socket that carries voltage, with its setting and what is plugged into it. */
public record LiveSocket(Socket socket, PedalMeaning meaning, List<Occupant> occupants) {
  public LiveSocket {
    occupants = List.copyOf(occupants);
  }
}
