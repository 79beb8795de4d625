package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Mode;
import stackside.model.Waveform;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds pulsed modes without a rhythm, and rhythms whose pulse is no shorter than its period. */
final class PulseTimesImpossible implements Rule {
  private static final Fault FAULT =
      new Fault(
          "pulse-times-impossible", Severity.ERROR, "a pulsed mode's times do not make a pulse");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().modes().stream().flatMap(mode -> problem(mode).stream()).toList();
  }

  private static Optional<Problem> problem(Mode mode) {
    boolean pulsed = mode.waveform().value() == Waveform.PULSED;
    if (pulsed && mode.pulse().isEmpty()) {
      return Optional.of(
          FAULT
              .at(
                  mode.waveform().at(),
                  "%s is pulsed, and no times are given for its pulse"
                      .formatted(Wording.quoted(mode)))
              .help("add 'pulse' from the manufacturer's instructions, or correct the waveform"));
    }
    if (!pulsed && mode.pulse().isPresent()) {
      return Optional.of(
          FAULT
              .at(
                  mode.waveform().at(),
                  "%s is %s, and times are given for a pulse"
                      .formatted(Wording.quoted(mode), mode.waveform().value().word()))
              .note(mode.pulse().orElseThrow().at(), "the times")
              .help("correct the waveform, or take the times out"));
    }
    return mode.pulse()
        .filter(pulse -> !pulse.isPulse())
        .map(
            pulse ->
                FAULT
                    .at(
                        pulse.on().at(),
                        "a pulse of %s that lasts %s and comes every %s is none"
                            .formatted(
                                Wording.quoted(mode), pulse.on().value(), pulse.every().value()))
                    .help("compare with the manufacturer's instructions; look at s and ms"));
  }
}
