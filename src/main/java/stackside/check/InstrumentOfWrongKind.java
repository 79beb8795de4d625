package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.EnergyKind;
import stackside.model.Instrument;
import stackside.model.Settings;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds instruments of another kind than socket and modes, which agree with each other. */
final class InstrumentOfWrongKind implements Rule {
  private static final Fault FAULT =
      new Fault(
          "instrument-of-wrong-kind",
          Severity.ERROR,
          "an instrument is of another kind than its socket and modes");

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
    Instrument instrument = settings.instrument().value();
    Optional<EnergyKind> socket = settings.socket().value().kind().value().energy();
    boolean othersAgree =
        !settings.assigned().isEmpty()
            && settings.assigned().stream()
                .allMatch(it -> socket.equals(Optional.of(it.mode().value().kind().value())));
    if (!othersAgree || socket.equals(Optional.of(instrument.kind().value()))) {
      return Optional.empty();
    }
    return Optional.of(
        FAULT
            .at(
                settings.instrument().at(),
                "%s is %s, and its socket and modes are %s"
                    .formatted(
                        Wording.quoted(instrument),
                        instrument.kind().value().spoken(),
                        socket.orElseThrow().spoken()))
            .note(instrument.kind().at(), "where the instrument's kind stands")
            .help("name the instrument that belongs to these settings"));
  }
}
