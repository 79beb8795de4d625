package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

final class TabulatedOutputTest {
  private static final TabulatedOutput TABLE =
      new TabulatedOutput(
          points(50, 30, 200, 60, 500, 60, 1000, 40),
          Optional.of(new Crest(2)),
          Optional.of(new PeakVolts(390)));

  private static List<TabulatedOutput.Point> points(double... pairs) {
    Stream.Builder<TabulatedOutput.Point> points = Stream.builder();
    for (int i = 0; i < pairs.length; i += 2) {
      points.add(new TabulatedOutput.Point(new Ohms(pairs[i]), new Watts(pairs[i + 1])));
    }
    return points.build().toList();
  }

  @Test
  void pointsAreMetExactly() {
    assertThat(TABLE.power(new Ohms(50))).contains(new Watts(30));
    assertThat(TABLE.power(new Ohms(200))).contains(new Watts(60));
    assertThat(TABLE.power(new Ohms(1000))).contains(new Watts(40));
  }

  @Test
  void straightBetweenNeighbours() {
    assertThat(TABLE.power(new Ohms(100)).orElseThrow().value()).isCloseTo(40, within(1e-9));
    assertThat(TABLE.power(new Ohms(750)).orElseThrow().value()).isCloseTo(50, within(1e-9));
  }

  @Test
  void neverBeyondTheFirstAndLastPoint() {
    assertThat(TABLE.power(new Ohms(49.9))).isEmpty();
    assertThat(TABLE.power(new Ohms(1000.1))).isEmpty();
    assertThat(TABLE.loads()).isEqualTo(new LoadRange(new Ohms(50), new Ohms(1000)));
  }

  @Test
  void peakVoltageNeverExceedsTheMode() {
    assertThat(TABLE.peakVoltage(new Ohms(200)).orElseThrow().value())
        .isCloseTo(2 * StrictMath.sqrt(12000), within(1e-9));
    assertThat(TABLE.peakVoltage(new Ohms(1000))).contains(new PeakVolts(390));
    assertThat(TABLE.peakVoltage(new Ohms(2000))).isEmpty();
  }

  @Test
  void withoutCrestFactorNoPeakVoltage() {
    TabulatedOutput bare = new TabulatedOutput(TABLE.points(), Optional.empty(), Optional.empty());
    assertThat(bare.peakVoltage(new Ohms(200))).isEmpty();
    TabulatedOutput open = new TabulatedOutput(TABLE.points(), TABLE.crest(), Optional.empty());
    assertThat(open.peakVoltage(new Ohms(1000)).orElseThrow().value()).isCloseTo(400, within(1e-9));
  }

  @Test
  void fullPowerFromTheFirstToTheLastPointThatHasIt() {
    assertThat(TABLE.reaching(new Watts(60))).contains(new LoadSpan(new Ohms(200), new Ohms(500)));
    assertThat(TABLE.reaching(new Watts(61))).isEmpty();
    assertThat(TABLE.highest()).isEqualTo(new Watts(60));
  }

  @Test
  void mostCurrentFlowsAtAPoint() {
    assertThat(TABLE.highestCurrent().value()).isCloseTo(StrictMath.sqrt(30 / 50.0), within(1e-12));
  }

  @Test
  void loadsThatDoNotRiseAreNoCurve() {
    assertThatThrownBy(() -> new TabulatedOutput(points(50, 1), Optional.empty(), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new TabulatedOutput(points(50, 1, 50, 2), Optional.empty(), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
