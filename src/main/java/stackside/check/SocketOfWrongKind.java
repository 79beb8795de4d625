package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.EnergyKind;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sockets of another kind than the instrument and the modes that should meet in them. */
final class SocketOfWrongKind implements Rule {
  private static final Fault FAULT =
      new Fault(
          "socket-of-wrong-kind",
          Severity.ERROR,
          "a socket is of another kind than the instrument and the modes");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .flatMap(settings -> problem(settings).stream())
        .toList();
  }

  private static Optional<Problem> problem(Settings settings) {
    EnergyKind instrument = settings.instrument().value().kind().value();
    Socket socket = settings.socket().value();
    boolean modesAgree =
        settings.assigned().stream().allMatch(it -> it.mode().value().kind().value() == instrument);
    if (!modesAgree || socket.kind().value().energy().equals(Optional.of(instrument))) {
      return Optional.empty();
    }
    return Optional.of(
        FAULT
            .at(
                settings.socket().at(),
                "socket %s is a %s one, and %s is %s"
                    .formatted(
                        Wording.quoted(socket),
                        socket.kind().value().spoken(),
                        Wording.quoted(settings.instrument().value()),
                        instrument.spoken()))
            .note(socket.kind().at(), "where the machine's description says so")
            .help("name the socket that this instrument goes into"));
  }
}
