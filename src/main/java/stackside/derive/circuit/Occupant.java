package stackside.derive.circuit;

import stackside.derive.chain.Chain;
import stackside.model.Instrument;
import stackside.model.Socket;

/**
 * An instrument in a socket.
 *
 * @param use whether it is the instrument in hand
 */
public record Occupant(
    Socket socket, Instrument instrument, Chain chain, Use use, Integrity integrity) {

  /** Whether somebody intends to use it. */
  public enum Use {
    IN_HAND,
    LEFT_IN
  }

  /** Whether the path from the socket to the tip is unbroken. */
  public enum Integrity {
    WHOLE,
    /** The plug makes no contact, and a socket that senses plugs detects none. */
    LOOSE,
    /** The plug makes no contact, but a socket that senses plugs still detects one. */
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
