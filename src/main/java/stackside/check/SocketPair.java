package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stackside.model.Machine;
import stackside.model.Socket;
import stackside.model.Unit;

/** A socket that has something of its own in common with an earlier one of its machine. */
record SocketPair(Socket socket, Socket first) {

  /** All pairs of which both have the same of what each should have alone. */
  static List<SocketPair> sharing(Unit unit, Function<Socket, Object> what) {
    List<SocketPair> pairs = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      Map<Object, Socket> taken = new LinkedHashMap<>();
      for (Socket socket : machine.sockets()) {
        Socket first = taken.computeIfAbsent(what.apply(socket), any -> socket);
        if (!first.id().equals(socket.id())) {
          pairs.add(new SocketPair(socket, first));
        }
      }
    }
    return pairs;
  }
}
