package stackside.check;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * One thing that content or a card may not get wrong: its fault, and a function that finds it. A
 * rule holds no state and calls no other rule.
 *
 * @param <T> what it looks at: a unit or a card
 * @param fault id, severity and summary
 * @param finds every place that shows the fault, in any order
 * @param answerable whether a profile can say under {@code because} that it is meant
 */
public record Rule<T>(Fault fault, Function<T, List<Finding>> finds, boolean answerable) {

  /** A rule that stops what depends on the mistake from being published. */
  public static <T> Rule<T> error(String id, String summary, Function<T, List<Finding>> finds) {
    return new Rule<>(new Fault(id, Severity.ERROR, summary), finds, false);
  }

  /** A rule about what is probably wrong. */
  public static <T> Rule<T> warning(String id, String summary, Function<T, List<Finding>> finds) {
    return new Rule<>(new Fault(id, Severity.WARNING, summary), finds, false);
  }

  /** A rule that only informs. */
  public static <T> Rule<T> note(String id, String summary, Function<T, List<Finding>> finds) {
    return new Rule<>(new Fault(id, Severity.NOTE, summary), finds, false);
  }

  /**
   * A warning that a profile can answer under {@code because}, by the rule's id.
   *
   * @param finds is given the profiles to ask about: those that have not answered
   */
  static Rule<CheckedUnit> question(
      String id, String summary, BiFunction<CheckedUnit, Predicate<Profile>, List<Finding>> finds) {
    return new Rule<>(
        new Fault(id, Severity.WARNING, summary),
        checked -> finds.apply(checked, profile -> !profile.answers(id)),
        true);
  }

  /** What the rule finds. */
  public List<Problem> problems(T checked) {
    return finds.apply(checked).stream().map(finding -> finding.of(fault)).toList();
  }
}
