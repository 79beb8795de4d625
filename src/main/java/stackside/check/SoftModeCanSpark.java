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
 * Asks about soft coagulation whose peak voltage is high enough for a spark. Common practice, from
 * memory (Farin and Grund): below about 200 V peak no spark forms.
 */
final class SoftModeCanSpark implements Rule {
  private static final Fault FAULT =
      new Fault(
          "soft-mode-can-spark", Severity.WARNING, "a soft mode has a peak voltage that can spark");

  private static final PeakVolts SPARK = new PeakVolts(200);

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .flatMap(machine -> machine.modes().stream())
        .filter(mode -> mode.current().value() == CurrentType.SOFT_COAGULATION)
        .flatMap(mode -> problem(mode).stream())
        .toList();
  }

  private static Optional<Problem> problem(Mode mode) {
    return mode.peakVoltage().stream()
        .flatMap(volts -> Stream.concat(volts.all().stream(), volts.each().values().stream()))
        .filter(volts -> volts.value().compareTo(SPARK) > 0)
        .findFirst()
        .map(
            volts ->
                FAULT
                    .at(
                        volts.at(),
                        "%s is soft coagulation, and %s can spark; above about %s a spark forms"
                            .formatted(Wording.quoted(mode), volts.value(), SPARK))
                    .note(mode.current().at(), "where its kind of current stands")
                    .help(
                        "see whether this is peak or peak to peak, and which kind of current it is"));
  }
}
