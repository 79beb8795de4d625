package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes of whose power the description says nothing. */
final class ModeWithoutPower implements Rule {
  private static final Fault FAULT =
      new Fault(
          "mode-without-power",
          Severity.ERROR,
          "a mode has neither a power limit nor a rated power");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().modes().stream()
        .filter(mode -> mode.powerLimit().isEmpty() && mode.ratedPower().isEmpty())
        .map(
            mode ->
                FAULT
                    .at(
                        mode.name().at(),
                        "neither a power limit nor a rated power is given for "
                            + Wording.quoted(mode))
                    .help("add 'power-limit' if watts can be set, or else 'rated-power'"))
        .toList();
  }
}
