package stackside.inspect;

import java.util.stream.Stream;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;

/** The phrases of a plan that word rules look at. */
final class CardPhrases {
  private CardPhrases() {}

  /** All numbered steps. */
  static Stream<StepLine> steps(CardPlan plan) {
    return Stream.concat(
        plan.blocks(Block.SetUp.class).stream().flatMap(list -> list.steps().stream()),
        plan.blocks(Block.Drilled.class).stream().flatMap(drill -> drill.steps().stream()));
  }

  /** Steps and cells, without the names that a display shows, which are printed as they are. */
  static Stream<Phrase> stepsAndCells(CardPlan plan) {
    Stream<Phrase> checks =
        steps(plan)
            .filter(step -> step.part() != StepLine.Part.ESCALATE)
            .flatMap(StepLine::phrases);
    return Stream.concat(
        checks,
        plan.blocks(Block.Answers.class).stream()
            .flatMap(answers -> answers.rows().stream())
            .flatMap(CardPhrases::cells));
  }

  private static Stream<Phrase> cells(AnswerRow row) {
    Stream<Phrase> scopes =
        row.scopes().stream()
            .flatMap(
                scope ->
                    Stream.concat(
                        Stream.of(scope.what(), scope.where()), scope.alternative().stream()));
    scopes = Stream.concat(scopes, row.cautions().stream());
    return Stream.concat(scopes, cells(row.answer()));
  }

  private static Stream<Phrase> cells(AnswerRow.Told answer) {
    if (answer instanceof AnswerRow.InWords words) {
      return words.means() == AnswerRow.Means.ELSEWHERE ? Stream.empty() : Stream.of(words.words());
    }
    if (answer instanceof AnswerRow.WithCurrent settings) {
      return Stream.concat(Stream.of(settings.instrument()), settings.argonFlow().stream());
    }
    throw new IllegalStateException("an answer without cells: " + answer);
  }

  /** All words that authors wrote in sentences, and the limits of the pedals. */
  static Stream<Phrase> authored(CardPlan plan) {
    Stream<Phrase> drills =
        plan.blocks(Block.Drilled.class).stream()
            .flatMap(
                drill ->
                    Stream.concat(Stream.of(drill.title(), drill.sign()), drill.never().stream()));
    return Stream.of(stepsAndCells(plan), drills, limits(plan)).flatMap(each -> each);
  }

  private static Stream<Phrase> limits(CardPlan plan) {
    return plan.blocks(Block.Answers.class).stream()
        .flatMap(answers -> answers.rows().stream())
        .map(AnswerRow::answer)
        .filter(AnswerRow.WithCurrent.class::isInstance)
        .map(AnswerRow.WithCurrent.class::cast)
        .flatMap(settings -> settings.pedals().stream())
        .flatMap(pedal -> pedal.limit().stream());
  }
}
