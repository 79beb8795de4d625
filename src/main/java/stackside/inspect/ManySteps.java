package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lists that are longer than they should be. */
final class ManySteps implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "many-steps",
          Severity.WARNING,
          "a list on a card has more steps than are easily kept in mind");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int SET_UP = 6;
  private static final int DRILL = 7;
  private static final int MOST = 9;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return new LongLists(FAULT, SET_UP, DRILL, MOST).problems(card);
  }
}
