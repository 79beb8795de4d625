package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.quantity.LitresPerMinute;
import stackside.quantity.PeakVolts;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;

/** Numbers as printed (SI brochure 5.4.3, ISMP list of error-prone notations; both read). */
final class NumbersTest {

  @Test
  void aSpaceThatDoesNotBreakStandsBeforeTheUnit() {
    assertThat(Numbers.text(new Watts(30))).isEqualTo("30\u00a0W");
    assertThat(Numbers.text(new PeakVolts(400))).isEqualTo("400\u00a0V\u00a0peak");
  }

  @Test
  void aNumberHasALeadingZeroAndNoTrailingOne() {
    assertThat(Numbers.text(new LitresPerMinute(0.80))).isEqualTo("0.8\u00a0L/min");
    assertThat(Numbers.number(1.0)).isEqualTo("1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1.01859|3|1.02", "0.002|3|0.002", "16211.1|2|16,000", "39.0625|2|39"})
  void calculatedNumbersAreRoundedToTheirDigits(double value, int digits, String text) {
    assertThat(Numbers.digits(value, digits)).isEqualTo(text);
  }

  @Test
  void shortTimesAreInMilliseconds() {
    assertThat(Numbers.brief(new Seconds(0.03))).isEqualTo("30" + Numbers.BOUND + "ms");
    assertThat(Numbers.brief(new Seconds(1))).isEqualTo("1" + Numbers.BOUND + "s");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"999|999", "1000|1,000", "2000|2,000", "12500|12,500", "1234.5|1,234.5"})
  void thousandsHaveAComma(double value, String text) {
    assertThat(Numbers.number(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Oval snare 15 mm|Oval snare 15~mm",
        "10 mm to 20 mm|10~mm to 20~mm",
        "2000 V peak|2000~V~peak",
        "3 Ways|3 Ways",
        "no number|no number"
      })
  void anAuthorsNumbersAreTiedToTheirUnits(String written, String bound) {
    assertThat(Numbers.bind(written)).isEqualTo(bound.replace('~', Numbers.BOUND));
  }
}
