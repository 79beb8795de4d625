package stackside.inspect;

import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds tables in which the wrong row is easily read. */
final class TooManyRows implements CardRule {

  private static final Fault FAULT =
      new Fault("too-many-rows", Severity.ERROR, "a card has more than ten rows");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 10;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.plan().blocks(Block.Answers.class).stream()
        .filter(answers -> answers.rows().size() > MOST)
        .map(
            answers ->
                FAULT
                    .at(card.at(), card.name() + " has " + answers.rows().size() + " rows")
                    .help("share the rows out over several cards with `cards:` in the room"))
        .toList();
  }
}
