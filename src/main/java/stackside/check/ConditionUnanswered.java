package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Condition;
import stackside.model.Machine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Tells of conditions that a machine can meet and its description does not answer. */
final class ConditionUnanswered implements Rule {
  private static final Fault FAULT =
      new Fault(
          "condition-unanswered",
          Severity.NOTE,
          "a machine's description leaves open how it answers a condition");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      List<String> open =
          Stream.of(Condition.values())
              .filter(machine::mayMeet)
              .filter(condition -> !machine.answers().containsKey(condition))
              .filter(condition -> !toldByOthers(analysis, machine, condition))
              .map(condition -> "'" + condition.word() + "'")
              .toList();
      if (!open.isEmpty()) {
        found.add(
            FAULT
                .at(
                    machine.name().at(),
                    "how %s answers %s is not described, and counts as unnoticed"
                        .formatted(Wording.quoted(machine), Wording.list(open)))
                .help("look at the machine or its instructions, and add it under 'answers'"));
      }
    }
    return found;
  }

  /** Where the set-up does not guard against it, that is an error and says this too. */
  private static boolean toldByOthers(Analysis analysis, Machine machine, Condition condition) {
    return Consequences.of(analysis).stream()
        .filter(sign -> sign.machine().id().equals(machine.id()))
        .filter(sign -> sign.condition().equals(Optional.of(condition)))
        .anyMatch(sign -> sign.guards().isEmpty());
  }
}
