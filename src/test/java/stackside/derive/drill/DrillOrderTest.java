package stackside.derive.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.derive.Edited;
import stackside.model.Drill;
import stackside.model.Kind;

final class DrillOrderTest {

  private static Search.Step step(double probability, double seconds, Integer... after) {
    return new Search.Step(probability, seconds, List.of(after));
  }

  /** P, Q, R, S of the worked example; all 24 orders were enumerated by hand (COMPUTED). */
  private static final List<Search.Step> EXAMPLE =
      List.of(step(0.50, 50), step(0.30, 20), step(0.15, 12), step(0.05, 10));

  @Test
  void probabilityOverCostFindsTheBestOrder() {
    Search.Found best = Search.among(EXAMPLE).orElseThrow();
    assertThat(best.order()).containsExactly(1, 2, 0, 3);
    assertThat(best.seconds()).isCloseTo(56.4, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1,2,0,3,56.4", "2,1,0,3,57.0", "3,2,1,0,62.4", "0,1,2,3,62.9", "3,0,2,1,68.9"})
  void expectedSecondsOfAnOrder(int a, int b, int c, int d, double seconds) {
    assertThat(Search.expected(EXAMPLE, a, b, c, d)).isCloseTo(seconds, within(1e-9));
  }

  static Stream<List<Search.Step>> drills() {
    Random random = new Random(511);
    return IntStream.range(0, 60).mapToObj(i -> drill(random, 1 + i % 8));
  }

  private static List<Search.Step> drill(Random random, int size) {
    double[] counts = random.doubles(size, 0, 10).map(Math::rint).toArray();
    double all = Math.max(1, DoubleStream.of(counts).sum());
    List<Search.Step> steps = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      List<Integer> after = new ArrayList<>();
      for (int j = 0; j < size; j++) {
        if (j < i && random.nextInt(5) == 0) {
          after.add(j);
        }
      }
      steps.add(new Search.Step(counts[i] / all, 1 + random.nextInt(60), after));
    }
    return steps;
  }

  /** Tries every order of up to eight checks that respects the required precedence. */
  @ParameterizedTest
  @MethodSource("drills")
  void noOrderIsSoonerThanTheOneFound(List<Search.Step> steps) {
    Search.Found found = Search.among(steps).orElseThrow();
    double best =
        orders(steps, List.of())
            .mapToDouble(order -> Search.expected(steps, order.stream().mapToInt(i -> i).toArray()))
            .min()
            .orElseThrow();
    assertThat(found.seconds()).isCloseTo(best, within(1e-6));
    assertThat(Search.expected(steps, found.order().stream().mapToInt(i -> i).toArray()))
        .isCloseTo(best, within(1e-6));
    assertThat(orders(steps, List.of())).contains(found.order());
  }

  private static Stream<List<Integer>> orders(List<Search.Step> steps, List<Integer> done) {
    if (done.size() == steps.size()) {
      return Stream.of(done);
    }
    return IntStream.range(0, steps.size())
        .boxed()
        .filter(next -> !done.contains(next) && done.containsAll(steps.get(next).after()))
        .flatMap(
            next -> {
              List<Integer> more = new ArrayList<>(done);
              more.add(next);
              return orders(steps, more);
            });
  }

  @Test
  void amongEqualsTheWrittenOrderStands() {
    List<Search.Step> alike = List.of(step(0.25, 10), step(0.5, 20), step(0.25, 10));
    assertThat(Search.among(alike).orElseThrow().order()).containsExactly(0, 1, 2);
  }

  @Test
  void whatMustComeFirstComesFirst() {
    List<Search.Step> steps = List.of(step(0.1, 60), step(0.9, 5, 0));
    assertThat(Search.among(steps).orElseThrow().order()).containsExactly(0, 1);
  }

  @Test
  void aCircleHasNoOrder() {
    assertThat(Search.among(List.of(step(0.5, 1, 1), step(0.5, 1, 0)))).isEmpty();
    assertThat(Search.among(List.of(step(1, 1, 5)))).isEmpty();
  }

  private static Optional<DrillOrder> ofDrill(String checks) {
    String patch =
        """
        === drills/smoke.yaml
        -  - {do: Replace the cable, mends: [instrument-cable-broken], takes: 40 s, needs: [snare-cable]}
        """;
    String more = checks.lines().map(line -> "+  - " + line + "\n").reduce("", String::concat);
    return DrillOrder.of(Edited.find(Edited.base(patch + more), Kind.DRILL, "smoke", Drill.class));
  }

  private static String check(int causes, int seconds) {
    return "{do: Look, mends: [instrument-cable-broken], takes: %d s, was-the-cause: %d}\n"
        .formatted(seconds, causes);
  }

  @Test
  void theWrittenOrderAgainstTheBest() {
    DrillOrder order =
        ofDrill(check(20, 50) + check(12, 20) + check(6, 12) + check(2, 10)).orElseThrow();
    assertThat(order.counted()).isEqualTo(40);
    assertThat(order.order()).containsExactly(2, 3, 1, 4);
    assertThat(order.written()).isCloseTo(62.9, within(1e-9));
    assertThat(order.best()).isCloseTo(56.4, within(1e-9));
    assertThat(order.couldBeSooner()).isTrue();
  }

  @Test
  void theBestOrderCouldNotBeSooner() {
    DrillOrder order = ofDrill(check(20, 10) + check(10, 20)).orElseThrow();
    assertThat(order.order()).containsExactly(1, 2);
    assertThat(order.couldBeSooner()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"24,false", "25,true"})
  void tooFewCountsSayNothing(int causes, boolean enough) {
    assertThat(ofDrill(check(causes - 1, 10) + check(1, 20)).isPresent()).isEqualTo(enough);
  }

  @Test
  void aCheckWithoutItsCountOrTimeSaysNothing() {
    assertThat(ofDrill(check(30, 10) + "{do: Look, mends: [mains-off], takes: 5 s}")).isEmpty();
    assertThat(ofDrill(check(30, 10) + "{do: Look, mends: [mains-off], was-the-cause: 5}"))
        .isEmpty();
  }

  @Test
  void precedenceIsCountedFromOne() {
    DrillOrder order =
        ofDrill(
                check(5, 60)
                    + "{do: Look, mends: [mains-off], takes: 5 s, was-the-cause: 30, after: [1]}")
            .orElseThrow();
    assertThat(order.order()).containsExactly(1, 2);
    assertThat(order.couldBeSooner()).isFalse();
  }
}
