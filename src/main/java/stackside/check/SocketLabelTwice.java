package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Socket;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sockets of one machine with the same label. */
final class SocketLabelTwice implements Rule {
  private static final Fault FAULT =
      new Fault(
          "socket-label-twice", Severity.ERROR, "two sockets of a machine have the same label");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return SocketPair.sharing(analysis.unit(), socket -> socket.label().value()).stream()
        .map(pair -> problem(pair.socket(), pair.first()))
        .toList();
  }

  private static Problem problem(Socket socket, Socket first) {
    return FAULT
        .at(
            socket.label().at(),
            "the label '%s' is that of socket '%s' already"
                .formatted(socket.label().value(), first.id().local()))
        .note(first.label().at(), "the other socket")
        .help(
            "write the label as it is printed on the machine; if both are alike, add where it is");
  }
}
