package stackside.inspect;

import java.util.List;
import java.util.function.IntPredicate;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;

/** Steps of a card by the number of their words, for the rules that draw the line. */
final class LongSteps {
  private LongSteps() {}

  static List<Problem> problems(InspectedCard card, Fault fault, IntPredicate words) {
    return CardPhrases.steps(card.plan())
        .map(StepLine::action)
        .filter(action -> words.test(action.length()))
        .map(
            action ->
                fault
                    .at(
                        action.at(),
                        "the step '" + action.words() + "' has " + action.length() + " words")
                    .help("say it in fewer words, or make two steps of it"))
        .toList();
  }
}
