package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that nobody can keep in mind. */
final class StepTooLong implements CardRule {

  private static final Fault FAULT =
      new Fault("step-too-long", Severity.ERROR, "a step has more than 20 words");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int LEAST = 20;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .map(StepLine::action)
        .filter(action -> found(action))
        .forEach(
            action ->
                problems.add(
                    FAULT
                        .at(
                            action.at(),
                            "the step '" + action.words() + "' has " + action.length() + " words")
                        .help("say it in fewer words, or make two steps of it")));
    return problems;
  }

  private static boolean found(Phrase action) {
    return action.length() > LEAST;
  }
}
