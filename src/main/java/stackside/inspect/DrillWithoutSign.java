package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds drills that do not begin with what is seen or heard. */
final class DrillWithoutSign implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "drill-without-sign", Severity.ERROR, "a drill on a card does not say when it is needed");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (Block.Drilled drill : card.plan().blocks(Block.Drilled.class)) {
      if (drill.sign().words().isBlank()) {
        problems.add(
            FAULT
                .at(
                    drill.sign().at(),
                    "the drill '" + drill.title().words() + "' names nothing that is seen or heard")
                .help("give its sign: tone, lamps, display or tissue"));
      }
    }
    return problems;
  }
}
