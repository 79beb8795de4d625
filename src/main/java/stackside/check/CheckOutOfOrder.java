package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds checks of a drill that stand before one that has to come first. */
final class CheckOutOfOrder implements Rule {
  private static final Fault FAULT =
      new Fault(
          "check-out-of-order",
          Severity.ERROR,
          "a check of a drill stands before one that must come first");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Drill drill : analysis.unit().drills()) {
      for (int i = 0; i < drill.checks().size(); i++) {
        int number = i + 1;
        drill.checks().get(i).after().stream()
            .filter(first -> first.value() < 1 || first.value() >= number)
            .forEach(first -> found.add(problem(drill, number, first)));
      }
    }
    return found;
  }

  private static Problem problem(Drill drill, int number, Fact<Integer> first) {
    String message;
    if (first.value() < 1 || first.value() > drill.checks().size()) {
      message = Wording.quoted(drill) + " has no check " + first.value();
    } else if (first.value() == number) {
      message = "check " + number + " cannot come after itself";
    } else {
      message =
          "check %s must come after check %s, and stands before it"
              .formatted(number, first.value());
    }
    return FAULT.at(first.at(), message).help("checks are counted from 1, in the order written");
  }
}
