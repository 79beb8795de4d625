package stackside.derive.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds, exactly, the order with the shortest expected time among all that respect the required
 * precedence. The expected time of the remaining checks depends only on which checks have been
 * done, so the best continuation from each set of completed checks is calculated once. Without
 * precedence, the result is the rule of probability over cost (Kadane and Simon 1977).
 */
final class Search {
  private static final double SAME = 1e-9;

  private final List<Step> steps;
  private final double[] seconds;
  private final int[] next;

  /**
   * One check.
   *
   * @param probability that it is the cause
   * @param after indices of checks that must be done first
   */
  record Step(double probability, double seconds, List<Integer> after) {
    Step {
      after = List.copyOf(after);
    }
  }

  /** An order and its expected time. */
  record Found(double seconds, List<Integer> order) {
    Found {
      order = List.copyOf(order);
    }
  }

  private Search(List<Step> steps) {
    this.steps = steps;
    this.seconds = new double[1 << steps.size()];
    this.next = new int[1 << steps.size()];
  }

  /**
   * The best order, which is the written one if no other is better. Absent if no order respects the
   * precedence.
   */
  static Optional<Found> among(List<Step> steps) {
    Search search = new Search(steps);
    int all = search.seconds.length - 1;
    for (int done = all - 1; done >= 0; done--) {
      search.bestAfter(done);
    }
    return Double.isInfinite(search.seconds[0]) ? Optional.empty() : Optional.of(search.found());
  }

  private void bestAfter(int done) {
    seconds[done] = Double.POSITIVE_INFINITY;
    double open = notYetFound(done);
    for (int i = 0; i < steps.size(); i++) {
      if (isNext(i, done)) {
        double total = steps.get(i).seconds() * open + seconds[done | 1 << i];
        if (total < seconds[done] - SAME) {
          seconds[done] = total;
          next[done] = i;
        }
      }
    }
  }

  private boolean isNext(int step, int done) {
    return (done & 1 << step) == 0
        && steps.get(step).after().stream().allMatch(first -> isDone(first, done));
  }

  private boolean isDone(int step, int done) {
    return step >= 0 && step < steps.size() && (done & 1 << step) != 0;
  }

  private double notYetFound(int done) {
    double open = 1;
    for (int i = 0; i < steps.size(); i++) {
      open -= (done & 1 << i) == 0 ? 0 : steps.get(i).probability();
    }
    return open;
  }

  private Found found() {
    List<Integer> order = new ArrayList<>();
    int done = 0;
    while (order.size() < steps.size()) {
      order.add(next[done]);
      done |= 1 << next[done];
    }
    return new Found(seconds[0], order);
  }

  /**
   * The expected time of an order: the sum of each check's time multiplied by the probability that
   * the check is needed.
   */
  static double expected(List<Step> steps, int... order) {
    double open = 1;
    double total = 0;
    for (int index : order) {
      total += steps.get(index).seconds() * open;
      open -= steps.get(index).probability();
    }
    return total;
  }
}
