package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

final class LimitedOutputTest {
  private static final LoadRange LOADS = new LoadRange(new Ohms(50), new Ohms(2000));

  /** 1 A up to 100 ohm, then 100 W up to 400 ohm, then 200 V RMS. */
  private static final OutputLimits CUT =
      new OutputLimits(
          Optional.of(new Amperes(1)),
          Optional.of(new Watts(100)),
          new PeakVolts(300),
          new Crest(1.5));

  private static final LimitedOutput CURVE = new LimitedOutput(LOADS, CUT);

  @Test
  void heldBackByCurrentThenPowerThenVoltage() {
    assertThat(CURVE.power(new Ohms(50))).contains(new Watts(50));
    assertThat(CURVE.power(new Ohms(200))).contains(new Watts(100));
    assertThat(CURVE.power(new Ohms(1000))).contains(new Watts(40));
    assertThat(CUT.limb(new Ohms(50))).isEqualTo(OutputLimits.Limb.CURRENT);
    assertThat(CUT.limb(new Ohms(200))).isEqualTo(OutputLimits.Limb.POWER);
    assertThat(CUT.limb(new Ohms(1000))).isEqualTo(OutputLimits.Limb.VOLTAGE);
  }

  @Test
  void nothingIsSaidOutsideThePublishedLoads() {
    assertThat(CURVE.power(new Ohms(49.9))).isEmpty();
    assertThat(CURVE.power(new Ohms(2000.1))).isEmpty();
    assertThat(CURVE.current(new Ohms(49.9))).isEmpty();
    assertThat(CURVE.peakVoltage(new Ohms(2000.1))).isEmpty();
    assertThat(CURVE.power(new Ohms(2000))).contains(new Watts(20));
  }

  @Test
  void peakVoltageFollowsTheLoadUpToThePeak() {
    assertThat(CURVE.peakVoltage(new Ohms(100)).orElseThrow().value()).isCloseTo(150, within(1e-9));
    assertThat(CURVE.peakVoltage(new Ohms(900)).orElseThrow().value()).isCloseTo(300, within(1e-9));
  }

  @Test
  void fullPowerFlowsBetweenTheCorners() {
    LoadSpan full = CURVE.reaching(new Watts(100)).orElseThrow();
    assertThat(full.from().value()).isCloseTo(100, within(1e-9));
    assertThat(full.to().value()).isCloseTo(400, within(1e-9));
    assertThat(CURVE.highest()).isEqualTo(new Watts(100));
    assertThat(CURVE.highestCurrent()).isEqualTo(new Amperes(1));
  }

  @Test
  void fullPowerIsCutOffAtThePublishedLoads() {
    LimitedOutput narrow = new LimitedOutput(new LoadRange(new Ohms(150), new Ohms(300)), CUT);
    assertThat(narrow.reaching(new Watts(100)))
        .contains(new LoadSpan(new Ohms(150), new Ohms(300)));
    assertThat(narrow.highestCurrent().value())
        .isCloseTo(StrictMath.sqrt(100 / 150.0), within(1e-12));
  }

  @Test
  void fullPowerThatBeginsBeyondThePublishedLoadsFlowsNowhere() {
    LimitedOutput high = new LimitedOutput(new LoadRange(new Ohms(500), new Ohms(2000)), CUT);
    assertThat(high.reaching(new Watts(100))).isEmpty();
    assertThat(high.highest()).isEqualTo(new Watts(80));
    LimitedOutput low = new LimitedOutput(new LoadRange(new Ohms(10), new Ohms(60)), CUT);
    assertThat(low.reaching(new Watts(100))).isEmpty();
    assertThat(low.highest()).isEqualTo(new Watts(60));
  }

  @Test
  void aLimitThatCurrentAndVoltageNeverAllowFlowsNowhere() {
    OutputLimits weak =
        new OutputLimits(
            Optional.of(new Amperes(0.5)),
            Optional.of(new Watts(120)),
            new PeakVolts(200),
            new Crest(2));
    LimitedOutput curve = new LimitedOutput(LOADS, weak);
    assertThat(curve.reaching(new Watts(120))).isEmpty();
    assertThat(curve.highest()).isEqualTo(new Watts(50));
    assertThat(curve.reaching(new Watts(50))).contains(new LoadSpan(new Ohms(200), new Ohms(200)));
  }

  @Test
  void moreThanTheLimitIsNeverReached() {
    assertThat(CURVE.reaching(new Watts(101))).isEmpty();
    assertThat(CURVE.reaching(new Watts(99))).isPresent();
  }

  @Test
  void withoutCurrentLimitPowerHoldsDownToTheLowestLoad() {
    OutputLimits open =
        new OutputLimits(
            Optional.empty(), Optional.of(new Watts(100)), new PeakVolts(300), new Crest(1.5));
    LimitedOutput curve = new LimitedOutput(LOADS, open);
    assertThat(curve.power(new Ohms(50))).contains(new Watts(100));
    assertThat(curve.reaching(new Watts(100)).orElseThrow().from()).isEqualTo(new Ohms(50));
    assertThat(curve.highestCurrent().value()).isCloseTo(StrictMath.sqrt(2), within(1e-12));
  }

  @Test
  void withoutPowerLimitCurrentAndVoltageMeet() {
    OutputLimits level =
        new OutputLimits(
            Optional.of(new Amperes(1)), Optional.empty(), new PeakVolts(300), new Crest(1.5));
    LimitedOutput curve = new LimitedOutput(LOADS, level);
    assertThat(curve.highest()).isEqualTo(new Watts(200));
    assertThat(level.limb(new Ohms(199))).isEqualTo(OutputLimits.Limb.CURRENT);
    assertThat(level.limb(new Ohms(201))).isEqualTo(OutputLimits.Limb.VOLTAGE);
  }

  @Test
  void withoutCurrentAndPowerLimitNothingIsClaimed() {
    assertThatThrownBy(
            () ->
                new OutputLimits(
                    Optional.empty(), Optional.empty(), new PeakVolts(300), new Crest(1.5)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
