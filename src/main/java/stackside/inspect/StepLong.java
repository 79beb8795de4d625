package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that are too long to be read aloud in one breath. */
final class StepLong implements CardRule {

  private static final Fault FAULT =
      new Fault("step-long", Severity.WARNING, "a step has more than 12 words");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int LEAST = 12;
  private static final int MOST = 20;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return LongSteps.problems(card, FAULT, words -> words > LEAST && words <= MOST);
  }
}
