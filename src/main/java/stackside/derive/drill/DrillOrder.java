package stackside.derive.drill;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stackside.model.Drill;
import stackside.model.DrillCheck;

/**
 * Compares the written order of a drill's checks with the order that finds the cause soonest on
 * average, according to the unit's own fault log. The make-safe step is not a check and never
 * moves. The calculation assumes exactly one cause, and checks that always find it. Expected
 * seconds do not measure harm.
 *
 * @param counted how often any of the checks was the cause, in total
 * @param written expected seconds in the written order
 * @param best expected seconds in the best order
 * @param order the best order, checks counted from 1; the written order if none is better
 */
public record DrillOrder(
    Drill drill, int counted, double written, double best, List<Integer> order) {

  /**
   * The number of counted causes that is enough. The standard error of a share is at most 1 / (2
   * √n), so with 25 or more no share is wrong by more than about ten percentage points. With fewer,
   * a different order may well be due to chance.
   */
  public static final int ENOUGH = 25;

  private static final int MOST_CHECKS = 16;
  private static final double NOTABLE = 1e-9;

  public DrillOrder {
    order = List.copyOf(order);
  }

  /**
   * The order of a drill's checks. Absent if a check has no time or count, if the log holds fewer
   * than {@link #ENOUGH} causes, or if the checks require each other in a circle.
   */
  public static Optional<DrillOrder> of(Drill drill) {
    List<DrillCheck> checks = drill.checks();
    boolean known =
        checks.stream()
            .allMatch(check -> check.takes().isPresent() && check.wasTheCause().isPresent());
    if (!known || checks.isEmpty() || checks.size() > MOST_CHECKS || counted(checks) < ENOUGH) {
      return Optional.empty();
    }
    return Search.among(steps(checks)).map(found -> of(drill, checks, found));
  }

  private static DrillOrder of(Drill drill, List<DrillCheck> checks, Search.Found found) {
    double written = Search.expected(steps(checks), IntStream.range(0, checks.size()).toArray());
    return new DrillOrder(
        drill,
        counted(checks),
        written,
        found.seconds(),
        found.order().stream().map(index -> index + 1).toList());
  }

  private static int counted(List<DrillCheck> checks) {
    return checks.stream()
        .mapToInt(check -> check.wasTheCause().map(fact -> fact.value()).orElse(0))
        .sum();
  }

  private static List<Search.Step> steps(List<DrillCheck> checks) {
    double all = counted(checks);
    return checks.stream()
        .map(
            check ->
                new Search.Step(
                    check.wasTheCause().orElseThrow().value() / all,
                    check.takes().orElseThrow().value().value(),
                    check.after().stream().map(fact -> fact.value() - 1).toList()))
        .toList();
  }

  /** Whether another order would find the cause sooner. */
  public boolean couldBeSooner() {
    return best < written - NOTABLE;
  }
}
