package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.StoredProgram;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds programs that belong to the plug in another socket than the profile's. A program that no
 * plug brings up is chosen by hand after plugging in, and that is fine.
 */
final class ProgramNotOfSocket implements Rule {
  private static final Fault FAULT =
      new Fault(
          "program-not-of-socket",
          Severity.ERROR,
          "the profile's program belongs to the plug in another socket");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .filter(it -> it.machine().value().selectsSocket().value() == SelectionKind.BY_PLUGGING_IN)
        .flatMap(
            profile ->
                profile.settings().stream()
                    .filter(Settings::belongTogether)
                    .flatMap(settings -> problem(profile.machine().value(), settings).stream()))
        .toList();
  }

  private static Optional<Problem> problem(Machine machine, Settings settings) {
    Socket socket = settings.socket().value();
    return settings
        .program()
        .map(StoredProgram::slot)
        .filter(slot -> !bringsUp(socket, slot.value()))
        .flatMap(
            slot ->
                machine.sockets().stream()
                    .filter(other -> bringsUp(other, slot.value()))
                    .findFirst()
                    .map(other -> problem(socket, slot, other)));
  }

  private static boolean bringsUp(Socket socket, int slot) {
    return socket.programOnPlugging().filter(brought -> brought.value() == slot).isPresent();
  }

  private static Problem problem(Socket socket, Fact<Integer> slot, Socket other) {
    return FAULT
        .at(
            slot.at(),
            "the profile names program %s in socket %s, and a plug in %s brings up program %s"
                .formatted(
                    slot.value(), Wording.quoted(socket), Wording.quoted(other), slot.value()))
        .note(
            other.programOnPlugging().orElseThrow().at(), "where the machine's description says so")
        .help("correct the slot or the socket, or the machine's description");
  }
}
