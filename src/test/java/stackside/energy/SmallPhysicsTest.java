package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;

final class SmallPhysicsTest {

  @Test
  void pulsesAverageToTheirShareOfTime() {
    Duty duty = Duty.of(new Seconds(0.03), new Seconds(0.9));
    assertThat(duty.share()).isCloseTo(1 / 30.0, within(1e-12));
    assertThat(duty.averaged(new Watts(60)).value()).isCloseTo(2, within(1e-9));
    assertThat(new Duty(0.25).averaged(new Amperes(1))).isEqualTo(new Amperes(0.5));
    assertThat(Duty.always().averaged(new Watts(60))).isEqualTo(new Watts(60));
  }

  @Test
  void averagedCurrentHeatsAsTheAveragedPowerSays() {
    Duty duty = new Duty(0.04);
    Amperes burst = new Amperes(0.8);
    Ohms load = new Ohms(100);
    assertThat(Current.power(duty.averaged(burst), load).value())
        .isCloseTo(duty.averaged(Current.power(burst, load)).value(), within(1e-12));
  }

  @Test
  void secondsInAnyMinuteEndWhereTheLimitIsReached() {
    AmpereSquaredSeconds limit = new AmpereSquaredSeconds(30);
    assertThat(Heating.inAnyMinute(limit, new Amperes(1))).isEqualTo(new Seconds(30));
    assertThat(Heating.inAnyMinute(limit, new Amperes(0.5))).isEqualTo(Heating.MINUTE);
    assertThat(Heating.inAnyMinute(new AmpereSquaredSeconds(15), new Amperes(0.5)))
        .isEqualTo(Heating.MINUTE);
    assertThat(Heating.inAnyMinute(limit, new Amperes(2)).value()).isCloseTo(7.5, within(1e-12));
    assertThat(Heating.inAnyMinute(limit, new Amperes(0))).isEqualTo(Heating.MINUTE);
  }

  @Test
  void crestFactorTurnsPeakIntoRmsAndBack() {
    Crest crest = new Crest(1.6);
    assertThat(crest.rms(new PeakVolts(480)).value()).isCloseTo(300, within(1e-9));
    assertThat(crest.peak(new RmsVolts(300)).value()).isCloseTo(480, within(1e-9));
    assertThat(new Crest(1).factor()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.06, 0.25, 0.5, 1})
  void theCrestFactorOfASineLetThroughTellsItsShareOfTimeAgain(double share) {
    assertThat(Crest.ofGatedSine(new Duty(share)).ofSineLetThrough().share())
        .isCloseTo(share, within(1e-12));
  }

  @Test
  void aCrestFactorBelowThatOfASineIsTakenAsASine() {
    assertThat(new Crest(1.4).ofSineLetThrough()).isEqualTo(Duty.always());
  }

  @Test
  void heatingGoesWithTheSquareOfTheDensity() {
    assertThat(new CurrentDensity(1).heatingAgainst(new CurrentDensity(0.25))).isEqualTo(16);
    assertThat(new CurrentDensity(0.25).heatingAgainst(new CurrentDensity(1))).isEqualTo(1 / 16.0);
  }

  @Test
  void aSpanHoldsItsEnds() {
    LoadSpan span = new LoadSpan(new Ohms(100), new Ohms(200));
    assertThat(span.holds(new Ohms(100))).isTrue();
    assertThat(span.holds(new Ohms(200))).isTrue();
    assertThat(span.holds(new Ohms(99.9))).isFalse();
    assertThat(span.holds(new Ohms(200.1))).isFalse();
    assertThatThrownBy(() -> new LoadSpan(new Ohms(200), new Ohms(100)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new LoadSpan(new Ohms(200), new Ohms(200)).holds(new Ohms(200))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.99, Double.NaN, Double.POSITIVE_INFINITY})
  void noCrestFactor(double factor) {
    assertThatThrownBy(() -> new Crest(factor)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
  void noShareOfTime(double share) {
    assertThatThrownBy(() -> new Duty(share)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void noVoltage(double volts) {
    assertThatThrownBy(() -> new RmsVolts(volts)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void noArea(double area) {
    assertThatThrownBy(() -> new Area(area)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void noTissue(double bad) {
    assertThatThrownBy(() -> new Tissue(bad, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Tissue(1, bad, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Tissue(1, 1, bad)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void noVoltageIsStillAVoltage() {
    assertThat(new RmsVolts(0).into(new Ohms(10))).isEqualTo(new Watts(0));
  }
}
