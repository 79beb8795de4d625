package stackside.cli;

import java.util.Set;
import stackside.source.Problem;

/**
 * Warnings that may mean harm: ten times a flow, a thin wall, current where none is usual. They may
 * be meant, and then the profile says so under {@code because}; until it does, nothing that rests
 * on it is issued.
 */
final class Unanswered {
  private static final Set<String> MAY_HURT =
      Set.of(
          "argon-flow-far-off",
          "thin-wall-higher",
          "small-lesion-with-current",
          "serrated-lesion-with-current");

  private Unanswered() {}

  static boolean mayHurt(Problem problem) {
    return MAY_HURT.contains(problem.fault().id());
  }
}
