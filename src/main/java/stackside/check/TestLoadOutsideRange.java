package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
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
        .filter(check -> !machine(check).loadRange().value().holds(check.load().value()))
        .collect(
            Collectors.groupingBy(
                check -> List.of(machine(check).id(), check.load().value()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .stream()
        .map(TestLoadOutsideRange::problem)
        .toList();
  }

  private static Machine machine(OutputCheck check) {
    return check.asset().value().machine().value();
  }

  /** Measurements at one load of one model are one mistake, be it the range or the load. */
  private static Problem problem(List<OutputCheck> same) {
    OutputCheck first = same.get(0);
    Fact<LoadRange> range = machine(first).loadRange();
    String more = same.size() == 1 ? "" : " (" + same.size() + " measurements)";
    return FAULT
        .at(
            first.load().at(),
            "at %s the output of %s is not published, so nothing can be compared with it%s"
                .formatted(first.load().value(), Wording.quoted(machine(first)), more))
        .note(range.at(), "the machine's description says " + range.value().text())
        .help("correct the load or the range if mistyped, or measure at a load in the range");
  }
}
