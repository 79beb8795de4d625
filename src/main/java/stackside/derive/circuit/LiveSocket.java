package stackside.derive.circuit;

import java.util.List;
import stackside.model.Socket;

/** A socket with voltage on it, in which setting, and what is in it. */
public record LiveSocket(Socket socket, PedalMeaning meaning, List<Occupant> occupants) {
  public LiveSocket {
    occupants = List.copyOf(occupants);
  }
}
