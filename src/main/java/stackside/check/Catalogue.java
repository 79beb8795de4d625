package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * The one list of all rules. The checks, the rule pages and {@code explain} are made from it; a
 * test holds that each rule has its page, its test and its fixtures.
 */
public final class Catalogue {

  private static final List<Rule> RULES = List.of();

  private Catalogue() {}

  /** Every rule, by subject. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** The fault that a rule of this id finds. */
  public static Optional<Fault> fault(String id) {
    return RULES.stream().map(Rule::fault).filter(fault -> fault.id().equals(id)).findFirst();
  }

  /** What all rules find, sorted by place, each problem once. */
  public static List<Problem> judge(Analysis analysis) {
    return RULES.stream()
        .flatMap(rule -> rule.problems(analysis).stream())
        .distinct()
        .sorted()
        .toList();
  }
}
