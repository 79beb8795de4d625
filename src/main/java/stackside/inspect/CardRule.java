package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * One thing that a card may not get wrong. The class is named after the fault, and its id is the
 * class name in kebab case; it holds no state and calls no other rule.
 */
public interface CardRule {

  /** What the rule finds: id, severity and summary. */
  Fault fault();

  /** Every place where the card shows the fault, in any order. */
  List<Problem> problems(InspectedCard card);
}
