package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds answers under {@code because} to questions that no rule asks. */
final class AnswerToUnknownQuestion implements Rule {
  private static final Fault FAULT =
      new Fault(
          "answer-to-unknown-question",
          Severity.ERROR,
          "an answer is given to a question that no rule asks");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<String> asked = Catalogue.questions();
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      profile
          .because()
          .forEach(
              (id, answer) -> {
                if (!asked.contains(id)) {
                  found.add(problem(id, answer, asked));
                }
              });
    }
    return found;
  }

  private static Problem problem(String id, Fact<String> answer, List<String> asked) {
    return FAULT
        .at(answer.at(), "no rule asks the question '" + id + "', which is answered here")
        .help(
            "write the id in brackets behind the warning; profiles can answer "
                + Wording.list(asked));
  }
}
