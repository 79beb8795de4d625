package stackside.inspect;

import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cards on which the right drill takes too long to find. */
final class TooManyDrillsOnCard implements CardRule {

  private static final Fault FAULT =
      new Fault("too-many-drills-on-card", Severity.ERROR, "a card holds more than two drills");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 2;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Block.Drilled> drills = card.plan().blocks(Block.Drilled.class);
    return drills.size() <= MOST
        ? List.of()
        : List.of(
            FAULT
                .at(
                    drills.get(MOST).title().at(),
                    card.name()
                        + " holds "
                        + drills.size()
                        + " drills, and an A4 page has room for 2")
                .help("say `on-card: yes` in two drills of this machine only"));
  }
}
