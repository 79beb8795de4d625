package stackside.derive.chain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stackside.model.Cable;
import stackside.model.Fact;
import stackside.model.PatientPart;
import stackside.model.Room;
import stackside.model.Socket;

/**
 * All chains that can be built from the cables and adaptors of one room. A chain uses each of them
 * at most once.
 */
public record Chains(List<Cable> cables) {

  public Chains {
    cables = List.copyOf(cables);
  }

  /** The chains that can be built from what a room keeps. */
  public static Chains in(Room room) {
    return new Chains(room.keeps().cables().stream().map(Fact::value).toList());
  }

  /** All chains that connect this to the socket, shortest first. */
  public List<Chain> between(PatientPart end, Socket socket) {
    return from(end).stream().filter(chain -> socket.takes(chain.plug())).toList();
  }

  /** The chain with the fewest parts that connects this to the socket. */
  public Optional<Chain> shortest(PatientPart end, Socket socket) {
    return between(end, socket).stream().findFirst();
  }

  /** All chains that start with this, shortest first. */
  public List<Chain> from(PatientPart end) {
    List<Chain> found = new ArrayList<>();
    grow(new Chain(end, List.of(), end.connector().value()), found);
    found.sort(Comparator.comparingInt(chain -> chain.cables().size()));
    return List.copyOf(found);
  }

  private void grow(Chain chain, List<Chain> found) {
    found.add(chain);
    for (Cable cable : cables) {
      if (cable.connector().value().equals(chain.plug()) && !holds(chain, cable)) {
        List<Cable> longer = new ArrayList<>(chain.cables());
        longer.add(cable);
        grow(new Chain(chain.end(), longer, cable.plug().value()), found);
      }
    }
  }

  private static boolean holds(Chain chain, Cable cable) {
    return chain.cables().stream().anyMatch(used -> used.id().equals(cable.id()));
  }
}
