package stackside.inspect;

import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cards that do not say what to do first whatever is wrong. */
final class MakeSafeMissing implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "make-safe-missing",
          Severity.ERROR,
          "cards do not say what to do first, whatever is wrong");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.plan().blocks(Block.MakeSafe.class).isEmpty()
        ? List.of(
            FAULT
                .at(
                    card.publication().unit().details().at(),
                    "no card says what to do first, whatever is wrong")
                .help("write one or two lines under `make-safe:` in unit.yaml"))
        : List.of();
  }
}
