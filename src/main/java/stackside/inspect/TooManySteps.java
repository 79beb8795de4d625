package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
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
    return new LongLists(FAULT, MOST, MOST, Integer.MAX_VALUE).problems(card);
  }
}
