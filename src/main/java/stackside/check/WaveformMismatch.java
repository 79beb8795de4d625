package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.CurrentType;
import stackside.model.Mode;
import stackside.model.Waveform;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds modes whose waveform does not fit their kind of current or their pulse times. Common
 * practice, no source.
 */
final class WaveformMismatch implements Rule {
  private static final Fault FAULT =
      new Fault(
          "waveform-mismatch", Severity.ERROR, "the waveform of a mode does not fit its current");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().modes().stream().flatMap(mode -> problem(mode).stream()).toList();
  }

  private static Optional<Problem> problem(Mode mode) {
    Waveform waveform = mode.waveform().value();
    CurrentType current = mode.current().value();
    if (fits(current, waveform)) {
      return Optional.empty();
    }
    return Optional.of(
        FAULT
            .at(
                mode.waveform().at(),
                "%s is a %s, and its waveform is said to be %s"
                    .formatted(Wording.quoted(mode), current.spoken(), waveform.spoken()))
            .note(mode.current().at(), "the kind of current")
            .help("correct the waveform, or the kind of current"));
  }

  private static boolean fits(CurrentType current, Waveform waveform) {
    return switch (current) {
      case PULSED_CUT -> waveform == Waveform.PULSED;
      case CUT, SOFT_COAGULATION -> waveform == Waveform.CONTINUOUS;
      case BLENDED_CUT -> waveform != Waveform.CONTINUOUS;
      case FORCED_COAGULATION, SPRAY_COAGULATION -> waveform == Waveform.MODULATED;
      case ARGON_PLASMA_COAGULATION -> waveform != Waveform.CONTINUOUS;
    };
  }
}
