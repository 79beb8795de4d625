package stackside.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerRangeTest {

  @ParameterizedTest
  @CsvSource({"10, true, true", "120, true, true", "62, true, false", "5, false, true"})
  void range_knowsItsStepsFromTheLowerEnd(double watts, boolean held, boolean onStep) {
    PowerRange range = PowerRange.parse("10 W to 120 W in steps of 5 W");
    assertThat(range.holds(new Watts(watts))).isEqualTo(held);
    assertThat(range.onStep(new Watts(watts))).isEqualTo(onStep);
  }

  @Test
  void tenthsOfAWatt_areOnStep() {
    PowerRange range = PowerRange.parse("0.1 W to 5 W in steps of 0.1 W");
    assertThat(range.onStep(new Watts(0.7))).isTrue();
    assertThat(range.text()).isEqualTo("0.1 W to 5 W in steps of 0.1 W");
  }

  @Test
  void rangeWithoutSteps_isRefused() {
    assertThatThrownBy(() -> PowerRange.parse("10 W to 120 W"))
        .hasMessage("'10 W to 120 W' is not a power range with a step");
  }

  @Test
  void backwardRange_isRefused() {
    assertThatThrownBy(() -> PowerRange.parse("120 W to 10 W in steps of 5 W"))
        .hasMessage("'120 W to 10 W in steps of 5 W' contains no power");
  }
}
