package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.OutputCheck;
import stackside.quantity.LoadRange;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds output checks at a load for which the machine's output is not published. */
final class TestLoadOutsideRange implements Rule {
  private static final Fault FAULT =
      new Fault(
          "test-load-outside-range",
          Severity.ERROR,
          "an output was measured at a load outside the machine's published range");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().outputChecks().stream()
        .filter(check -> !range(check).value().holds(check.load().value()))
        .map(
            check ->
                FAULT
                    .at(
                        check.load().at(),
                        "at %s the output of %s is not published, so nothing can be compared with it"
                            .formatted(
                                check.load().value(),
                                Wording.quoted(check.asset().value().machine().value())))
                    .note(
                        range(check).at(),
                        "the machine's description says " + range(check).value().text())
                    .help("correct the load if it is mistyped, or measure at one in the range"))
        .toList();
  }

  private static Fact<LoadRange> range(OutputCheck check) {
    return check.asset().value().machine().value().loadRange();
  }
}
