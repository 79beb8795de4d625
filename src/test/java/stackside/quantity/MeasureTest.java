package stackside.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTest {

  @ParameterizedTest
  @CsvSource({
    "30 W, 30, 30 W",
    "30W, 30, 30 W",
    "0.8 W, 0.8, 0.8 W",
    "120.0 W, 120, 120 W",
    "100000 W, 100000, 100000 W"
  })
  void plainDecimal_isRead(String text, double value, String printed) {
    Watts power = Watts.MEASURE.parse(text);
    assertThat(power.value()).isEqualTo(value);
    assertThat(power.text()).isEqualTo(printed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"900 ms", "0.9 s"})
  void unitsOfOneMeasure_giveTheSameValue(String text) {
    assertThat(Seconds.MEASURE.parse(text)).isEqualTo(new Seconds(0.9));
  }

  @Test
  void kilovoltPeak_isReadAsVolts() {
    assertThat(PeakVolts.MEASURE.parse("4 kV peak")).isEqualTo(new PeakVolts(4000));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60 | '60' has no unit",
        "060 W | '060 W' has an unnecessary leading zero",
        ".5 W | '.5 W' is not a power",
        "1e3 W | '1e3 W' is not a power: its unit 'e3 W' is not W",
        "1,5 W | '1,5 W' is not a power: its unit ',5 W' is not W",
        "-5 W | '-5 W' is not a power",
        "60 V | '60 V' is not a power: its unit 'V' is not W",
        "99999999 W | '99999999 W' is far too large for a power",
        "NaN W | 'NaN W' is not a power"
      })
  void unreadablePower_saysWhy(String text, String problem) {
    assertThatThrownBy(() -> Watts.MEASURE.parse(text))
        .isInstanceOfSatisfying(
            UnreadableQuantity.class,
            unreadable -> {
              assertThat(unreadable.problem()).isEqualTo(problem);
              assertThat(unreadable.hint())
                  .isEqualTo("write a power as a plain number, a space and W");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "400 V | does not say which voltage it is",
        "400 Vpp | is peak to peak",
        "400 V peak to peak | is peak to peak"
      })
  void voltageOtherThanPeak_isRefused(String text, String problem) {
    assertThatThrownBy(() -> PeakVolts.MEASURE.parse(text)).hasMessageContaining(problem);
  }
}
