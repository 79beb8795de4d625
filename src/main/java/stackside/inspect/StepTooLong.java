package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that nobody can keep in mind. */
final class StepTooLong implements CardRule {

  private static final Fault FAULT =
      new Fault("step-too-long", Severity.ERROR, "a step has more than 20 words");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int LEAST = 20;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return LongSteps.problems(card, FAULT, words -> words > LEAST);
  }
}
