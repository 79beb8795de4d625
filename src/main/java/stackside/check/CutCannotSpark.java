package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.CurrentType;
import stackside.model.Mode;
import stackside.quantity.PeakVolts;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about cutting modes whose peak voltage is too low for the spark that cuts. Common practice,
 * from memory (Farin and Grund): below about 200 V peak no spark forms.
 */
final class CutCannotSpark implements Rule {
  private static final Fault FAULT =
      new Fault(
          "cut-cannot-spark", Severity.WARNING, "a cutting mode has a peak voltage too low to cut");

  private static final PeakVolts SPARK = new PeakVolts(200);

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .flatMap(machine -> machine.modes().stream())
        .filter(mode -> cuts(mode.current().value()))
        .flatMap(mode -> problem(mode).stream())
        .toList();
  }

  private static boolean cuts(CurrentType current) {
    return switch (current) {
      case CUT, BLENDED_CUT, PULSED_CUT -> true;
      case SOFT_COAGULATION, FORCED_COAGULATION, SPRAY_COAGULATION, ARGON_PLASMA_COAGULATION ->
          false;
    };
  }

  private static Optional<Problem> problem(Mode mode) {
    return mode.peakVoltage().stream()
        .flatMap(volts -> Stream.concat(volts.all().stream(), volts.each().values().stream()))
        .filter(volts -> volts.value().compareTo(SPARK) < 0)
        .findFirst()
        .map(
            volts ->
                FAULT
                    .at(
                        volts.at(),
                        "%s is a cutting mode, and %s cannot cut; a spark needs about %s"
                            .formatted(Wording.quoted(mode), volts.value(), SPARK))
                    .note(mode.current().at(), "where its kind of current stands")
                    .help("see whether this is a peak voltage, and which kind of current it is"));
  }
}
