package stackside.check;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Condition;
import stackside.model.OutputSeen;
import stackside.model.Response;
import stackside.model.Tone;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds answers of machines that current and mains do not allow. */
final class AnswerImpossible implements Rule {
  private static final Fault FAULT =
      new Fault(
          "answer-impossible", Severity.ERROR, "a machine is said to give what it cannot give");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .flatMap(machine -> machine.answers().entrySet().stream())
        .flatMap(answer -> problems(answer.getKey(), answer.getValue()))
        .toList();
  }

  private static Stream<Problem> problems(Condition condition, Response response) {
    Stream<Problem> output =
        response.output().stream()
            .filter(seen -> seen.value() != OutputSeen.NONE && givesNone(condition))
            .map(
                seen ->
                    FAULT
                        .at(
                            seen.at(),
                            "'%s' lets no current through, and the output is said to be %s"
                                .formatted(condition.spoken(), seen.value().spoken()))
                        .help("correct the output to 'none'"));
    Stream<Problem> tone =
        response.tone().stream()
            .filter(heard -> heard.value() != Tone.NONE && condition == Condition.MAINS_OFF)
            .map(
                heard ->
                    FAULT
                        .at(
                            heard.at(),
                            "without mains nothing sounds, and the tone is said to be "
                                + heard.value().spoken())
                        .help("correct the tone to 'none'"));
    return Stream.concat(output, tone);
  }

  /** An open circuit carries no current, whatever the machine does. */
  private static boolean givesNone(Condition condition) {
    return switch (condition) {
      case INSTRUMENT_CIRCUIT_OPEN, SELECTED_SOCKET_EMPTY, FOOT_SWITCH_MISSING, MAINS_OFF -> true;
      case NEUTRAL_CIRCUIT_OPEN, NEUTRAL_CONTACT_POOR, ARGON_EMPTY -> false;
    };
  }
}
