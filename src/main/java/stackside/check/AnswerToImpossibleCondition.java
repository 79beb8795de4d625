package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Condition;
import stackside.model.Machine;
import stackside.model.Response;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds answers to conditions that the machine cannot meet as it is described. */
final class AnswerToImpossibleCondition implements Rule {
  private static final Fault FAULT =
      new Fault(
          "answer-to-impossible-condition",
          Severity.ERROR,
          "a machine's description answers a condition that the machine cannot meet");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      machine
          .answers()
          .forEach(
              (condition, answer) -> {
                if (!machine.mayMeet(condition)) {
                  found.add(problem(machine, condition, answer));
                }
              });
    }
    return found;
  }

  private static Problem problem(Machine machine, Condition condition, Response answer) {
    return FAULT
        .at(
            answer.at(),
            "%s cannot notice this: %s"
                .formatted(Wording.quoted(machine), reason(machine, condition)))
        .help("take the answer out, or correct the description");
  }

  private static String reason(Machine machine, Condition condition) {
    return switch (condition) {
      case SELECTED_SOCKET_EMPTY -> "none of its sockets senses a plug";
      case NEUTRAL_CONTACT_POOR, NEUTRAL_CIRCUIT_OPEN ->
          "its monitor is '%s'".formatted(machine.monitor().value().word());
      case ARGON_EMPTY -> "it has no argon mode";
      case INSTRUMENT_CIRCUIT_OPEN, FOOT_SWITCH_MISSING, MAINS_OFF ->
          throw new IllegalStateException("every machine meets " + condition.word());
    };
  }
}
