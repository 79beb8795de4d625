package stackside.derive.circuit;

import stackside.derive.chain.Chain;
import stackside.model.Instrument;
import stackside.model.Socket;

/**
 * An instrument in a socket.
 *
 * @param use whether it is the one in hand
 */
public record Occupant(
    Socket socket, Instrument instrument, Chain chain, Use use, Integrity integrity) {

  /** Whether somebody means to use it. */
  public enum Use {
    IN_HAND,
    LEFT_IN
  }

  /** Whether the way from the socket to the tip is whole. */
  public enum Integrity {
    WHOLE,
    /** The plug makes no contact, and a socket that senses plugs finds none. */
    LOOSE,
    /** Contact is lost where a socket that senses plugs does not notice it. */
    LOOSE_BUT_SENSED,
    BROKEN;

    boolean conducts() {
      return this == WHOLE;
    }

    boolean sensed() {
      return this != LOOSE;
    }
  }
}
