package stackside.inspect;

import java.util.List;
import java.util.stream.Stream;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * Lists of a card by the number of their steps, for the rules that draw the line.
 *
 * @param setUp how many steps of a set-up are few enough
 * @param drill how many steps of a drill are few enough
 * @param most from how many on another rule speaks
 */
record LongLists(Fault fault, int setUp, int drill, int most) {

  List<Problem> problems(InspectedCard card) {
    Stream<Problem> setUps =
        card.plan().blocks(Block.SetUp.class).stream()
            .flatMap(list -> judged(list.heading(), list.steps(), setUp));
    Stream<Problem> drills =
        card.plan().blocks(Block.Drilled.class).stream()
            .flatMap(list -> judged(list.title(), list.steps(), drill));
    return Stream.concat(setUps, drills).toList();
  }

  private Stream<Problem> judged(Phrase title, List<StepLine> steps, int enough) {
    if (steps.size() <= enough || steps.size() > most) {
      return Stream.of();
    }
    return Stream.of(
        fault
            .at(
                steps.get(enough).action().at(),
                "'"
                    + title.words()
                    + "' has "
                    + steps.size()
                    + " steps; from here on it is too long")
            .help("leave out what is obvious on sight, or make two lists"));
  }
}
