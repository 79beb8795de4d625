package stackside.derive.circuit;

import java.util.Optional;
import stackside.model.Instrument;
import stackside.model.SingleFault;
import stackside.model.Socket;

/**
 * One way in which a single fault can occur.
 *
 * @param socket the wrong socket, or the socket in which the other instrument was left
 * @param other the instrument that was left plugged in
 * @param program the program that is active by mistake
 * @param integrity how the path to the tip is interrupted
 */
public record Deviation(
    SingleFault fault,
    Optional<Socket> socket,
    Optional<Instrument> other,
    Optional<Program> program,
    Optional<Occupant.Integrity> integrity) {

  static Deviation of(SingleFault fault) {
    return new Deviation(
        fault, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  static Deviation wrongSocket(Socket socket) {
    return new Deviation(
        SingleFault.INSTRUMENT_IN_WRONG_SOCKET,
        Optional.of(socket),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Deviation leftIn(Socket socket, Instrument other) {
    return new Deviation(
        SingleFault.OTHER_INSTRUMENT_LEFT_IN,
        Optional.of(socket),
        Optional.of(other),
        Optional.empty(),
        Optional.empty());
  }

  static Deviation wrongProgram(Program program) {
    return new Deviation(
        SingleFault.WRONG_PROGRAM,
        Optional.empty(),
        Optional.empty(),
        Optional.of(program),
        Optional.empty());
  }

  static Deviation interrupted(SingleFault fault, Occupant.Integrity integrity) {
    return new Deviation(
        fault, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(integrity));
  }
}
