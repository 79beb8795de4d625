package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * One thing that content may not get wrong. The class is named after the fault, and its id is the
 * class name in kebab case; it holds no state and calls no other rule.
 */
public interface Rule {

  /** What the rule finds: id, severity and summary. */
  Fault fault();

  /** Every place where the unit shows the fault, in any order. */
  List<Problem> problems(Analysis analysis);
}
