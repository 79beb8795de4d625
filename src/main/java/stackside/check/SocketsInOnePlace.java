package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Socket;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sockets of one machine that are described in the same place of its front. */
final class SocketsInOnePlace implements Rule {
  private static final Fault FAULT =
      new Fault(
          "sockets-in-one-place", Severity.ERROR, "two sockets of a machine stand in one place");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return SocketPair.sharing(analysis.unit(), socket -> socket.place().value()).stream()
        .map(pair -> problem(pair.socket(), pair.first()))
        .toList();
  }

  private static Problem problem(Socket socket, Socket first) {
    return FAULT
        .at(
            socket.place().at(),
            "%s is where %s is already: %s"
                .formatted(
                    Wording.quoted(socket), Wording.quoted(first), socket.place().value().text()))
        .note(first.place().at(), "the other socket")
        .help("count rows from the top and columns from the left, as seen from the front");
  }
}
