package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lists that are longer than anybody follows. */
final class TooManySteps implements CardRule {

  private static final Fault FAULT =
      new Fault("too-many-steps", Severity.ERROR, "a list on a card has more than nine steps");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 9;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (Block.SetUp list : card.plan().blocks(Block.SetUp.class)) {
      judge(list.heading().words(), list.steps(), MOST, list.heading().at(), problems);
    }
    for (Block.Drilled drill : card.plan().blocks(Block.Drilled.class)) {
      judge(drill.title().words(), drill.steps(), MOST, drill.title().at(), problems);
    }
    return problems;
  }

  private static void judge(
      String title, List<StepLine> steps, int most, Location otherwise, List<Problem> problems) {
    if (steps.size() > most) {
      Location at = steps.get(most).action().at();
      problems.add(
          FAULT
              .at(
                  at.equals(otherwise) ? otherwise : at,
                  "'" + title + "' has " + steps.size() + " steps; from here on it is too long")
              .help("leave out what is obvious on sight, or make two lists"));
    }
  }
}
