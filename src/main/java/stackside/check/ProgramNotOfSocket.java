package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.StoredProgram;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds programs that plugging in at their socket does not bring up. */
final class ProgramNotOfSocket implements Rule {
  private static final Fault FAULT =
      new Fault(
          "program-not-of-socket",
          Severity.ERROR,
          "plugging in brings up another program than the profile names");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .filter(it -> it.machine().value().selectsSocket().value() == SelectionKind.BY_PLUGGING_IN)
        .flatMap(profile -> profile.settings().stream())
        .flatMap(settings -> problem(settings).stream())
        .toList();
  }

  private static Optional<Problem> problem(Settings settings) {
    Socket socket = settings.socket().value();
    return settings
        .program()
        .map(StoredProgram::slot)
        .flatMap(
            slot ->
                socket
                    .programOnPlugging()
                    .filter(brought -> !brought.value().equals(slot.value()))
                    .map(brought -> problem(socket, slot, brought)));
  }

  private static Problem problem(Socket socket, Fact<Integer> slot, Fact<Integer> brought) {
    return FAULT
        .at(
            slot.at(),
            "a plug in socket %s brings up program %d, and the profile names program %d"
                .formatted(Wording.quoted(socket), brought.value(), slot.value()))
        .note(brought.at(), "where the machine's description says so")
        .help("correct the slot or the socket, or the machine's description");
  }
}
