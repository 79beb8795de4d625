package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.guidance.OverMost;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes described as going over 400 W. From memory: IEC 60601-2-2, 201.12.4.4.101. */
final class PowerOverFourHundredWatts implements Rule {
  private static final Fault FAULT =
      new Fault(
          "power-over-four-hundred-watts",
          Severity.ERROR,
          "a mode is described as going over 400 W");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.questions().overMost().stream()
        .map(
            over ->
                FAULT
                    .at(
                        over.power().at(),
                        "%s would give %s, and no such machine may give more than %s"
                            .formatted(
                                Wording.quoted(over.mode()), over.power().value(), OverMost.MOST))
                    .help("compare with the manufacturer's instructions; a digit may be too many"))
        .toList();
  }
}
