package stackside.cli;

import java.util.Set;
import stackside.source.Problem;

/**
 * Warnings that may mean harm: ten times a flow or a power, the higher setting at a thin wall or
 * for a child, current where none is usual. They may be meant, and then the profile says so under
 * {@code because}; until it does, nothing that rests on it is issued.
 */
final class Unanswered {
  /** Ids of questions that a profile can answer. */
  static final Set<String> MAY_HURT =
      Set.of(
          "argon-flow-far-off",
          "limit-ten-times-others",
          "lighter-patient-higher",
          "thin-wall-higher",
          "small-lesion-with-current",
          "serrated-lesion-with-current");

  private Unanswered() {}

  static boolean mayHurt(Problem problem) {
    return MAY_HURT.contains(problem.fault().id());
  }
}
