package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/** Properties that every output stage must have, tested on many generated from a fixed seed. */
final class OutputPropertiesTest {
  private static final double CLOSE = 1e-9;
  private static final LoadRange LOADS = new LoadRange(new Ohms(10), new Ohms(4000));

  static Stream<OutputLimits> stages() {
    Random random = new Random(417);
    return IntStream.range(0, 200).mapToObj(i -> stage(random, i % 3));
  }

  private static OutputLimits stage(Random random, int kind) {
    Optional<Amperes> current = Optional.of(new Amperes(0.2 + random.nextDouble() * 2));
    Optional<Watts> power = Optional.of(new Watts(5 + random.nextDouble() * 250));
    return new OutputLimits(
        kind == 1 ? Optional.empty() : current,
        kind == 2 ? Optional.empty() : power,
        new PeakVolts(60 + random.nextDouble() * 4000),
        new Crest(1.414 + random.nextDouble() * 6));
  }

  private static Stream<Ohms> loads() {
    return IntStream.rangeClosed(0, 300)
        .mapToObj(i -> new Ohms(10 * StrictMath.pow(400, i / 300.0)));
  }

  @ParameterizedTest
  @MethodSource("stages")
  void powerIsCurrentSquaredByLoadAndVoltageSquaredOverLoad(OutputLimits stage) {
    loads()
        .forEach(
            load -> {
              Watts power = stage.power(load);
              Amperes current = Current.through(load, power);
              RmsVolts voltage = RmsVolts.across(load, power);
              assertThat(Current.power(current, load).value())
                  .isCloseTo(power.value(), within(1e-6));
              assertThat(voltage.into(load).value()).isCloseTo(power.value(), within(1e-6));
              assertThat(voltage.value() / current.value()).isCloseTo(load.value(), within(1e-6));
            });
  }

  @ParameterizedTest
  @MethodSource("stages")
  void neverAboveAnyLimit(OutputLimits stage) {
    LimitedOutput curve = new LimitedOutput(LOADS, stage);
    loads()
        .filter(LOADS::holds)
        .forEach(
            load -> {
              stage
                  .power()
                  .ifPresent(
                      most ->
                          assertThat(curve.power(load).orElseThrow().value())
                              .isLessThanOrEqualTo(most.value()));
              stage
                  .current()
                  .ifPresent(
                      most ->
                          assertThat(curve.current(load).orElseThrow().value())
                              .isLessThanOrEqualTo(most.value() * (1 + CLOSE)));
              assertThat(curve.peakVoltage(load).orElseThrow().value())
                  .isLessThanOrEqualTo(stage.peak().value() * (1 + CLOSE));
              assertThat(curve.power(load).orElseThrow().value())
                  .isLessThanOrEqualTo(curve.highest().value() * (1 + CLOSE));
              assertThat(curve.current(load).orElseThrow().value())
                  .isLessThanOrEqualTo(curve.highestCurrent().value() * (1 + CLOSE));
            });
  }

  /**
   * IEC 60601-2-2, 201.12.1.102, from memory: output must not rise when a control is turned down.
   */
  @ParameterizedTest
  @MethodSource("stages")
  void neverRisesWhenASettingFalls(OutputLimits stage) {
    OutputLimits lessPower =
        new OutputLimits(
            stage.current(),
            Optional.of(new Watts(stage.power().map(Watts::value).orElse(300.0) * 0.8)),
            stage.peak(),
            stage.crest());
    OutputLimits lessVoltage =
        new OutputLimits(
            stage.current(),
            stage.power(),
            new PeakVolts(stage.peak().value() * 0.8),
            stage.crest());
    loads()
        .forEach(
            load -> {
              assertThat(lessPower.power(load).value())
                  .isLessThanOrEqualTo(stage.power(load).value());
              assertThat(lessVoltage.power(load).value())
                  .isLessThanOrEqualTo(stage.power(load).value());
            });
  }

  @ParameterizedTest
  @MethodSource("stages")
  void continuousAtTheCorners(OutputLimits stage) {
    for (double corner : corners(stage)) {
      double below = stage.power(new Ohms(corner * (1 - 1e-9))).value();
      double above = stage.power(new Ohms(corner * (1 + 1e-9))).value();
      assertThat(above).isCloseTo(below, within(below * 1e-7));
    }
  }

  private static List<Double> corners(OutputLimits stage) {
    List<Double> corners = new ArrayList<>();
    double volts = stage.voltage().value();
    stage.power().ifPresent(power -> corners.add(volts * volts / power.value()));
    stage.current().ifPresent(current -> corners.add(volts / current.value()));
    if (stage.power().isPresent() && stage.current().isPresent()) {
      double amperes = stage.current().get().value();
      corners.add(stage.power().get().value() / (amperes * amperes));
    }
    return corners;
  }

  /** With rising load the limit is current, then power, then voltage, and never changes back. */
  @ParameterizedTest
  @MethodSource("stages")
  void limbsFollowInOrder(OutputLimits stage) {
    List<OutputLimits.Limb> limbs = loads().map(stage::limb).distinct().toList();
    assertThat(limbs).isSorted();
    assertThat(loads().map(stage::limb).toList()).isSorted();
  }

  @ParameterizedTest
  @MethodSource("stages")
  void fullPowerFlowsExactlyWhereItIsSaidTo(OutputLimits stage) {
    LimitedOutput curve = new LimitedOutput(LOADS, stage);
    stage
        .power()
        .ifPresent(
            full -> {
              Optional<LoadSpan> span = curve.reaching(full);
              loads()
                  .filter(LOADS::holds)
                  .filter(load -> span.stream().noneMatch(s -> isEnd(s, load)))
                  .forEach(
                      load ->
                          assertThat(stage.limb(load) == OutputLimits.Limb.POWER)
                              .as(load + " of " + span)
                              .isEqualTo(span.stream().anyMatch(s -> s.holds(load))));
            });
  }

  private static boolean isEnd(LoadSpan span, Ohms load) {
    return Math.abs(span.from().value() - load.value()) < 1e-6
        || Math.abs(span.to().value() - load.value()) < 1e-6;
  }

  @ParameterizedTest
  @MethodSource("tables")
  void interpolationStaysBetweenNeighbours(TabulatedOutput table) {
    List<TabulatedOutput.Point> points = table.points();
    for (int i = 1; i < points.size(); i++) {
      double low = Math.min(points.get(i - 1).power().value(), points.get(i).power().value());
      double high = Math.max(points.get(i - 1).power().value(), points.get(i).power().value());
      double from = points.get(i - 1).load().value();
      double to = points.get(i).load().value();
      double before = points.get(i - 1).power().value();
      boolean rises = points.get(i).power().value() >= before;
      for (int j = 0; j <= 20; j++) {
        double power =
            table.power(new Ohms(Math.min(to, from + (to - from) * j / 20))).orElseThrow().value();
        assertThat(power).isBetween(low - CLOSE, high + CLOSE);
        assertThat(rises ? power >= before - CLOSE : power <= before + CLOSE).isTrue();
        before = power;
      }
    }
  }

  static Stream<TabulatedOutput> tables() {
    Random random = new Random(533);
    return IntStream.range(0, 50)
        .mapToObj(
            i -> {
              List<TabulatedOutput.Point> points = new ArrayList<>();
              double load = 20;
              for (int j = 0; j < 2 + i % 6; j++) {
                points.add(
                    new TabulatedOutput.Point(
                        new Ohms(load), new Watts(random.nextDouble() * 100)));
                load += 1 + random.nextDouble() * 500;
              }
              return new TabulatedOutput(points, Optional.empty(), Optional.empty());
            });
  }
}
