package stackside.derive.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;

/** Tolerance and share are the unit's own data; the base unit uses 20 and 10 percent. */
final class MeasuredTest {

  private static Measured measured(String row) {
    return Measured.of(
            Edited.base(
                """
                === output-checks.csv
                +asset,date,mode,level,limit,load,watts,method,initials
                +%s
                """
                    .formatted(row)))
        .get(0);
  }

  /**
   * A peak of 190 V at a crest factor of 1.4 drives 36.8 W into 500 ohm, whatever the dial says.
   */
  @Test
  void aSoftModeFarBelowItsDialIsRight() {
    Measured measured = measured("EQ-2,2026-03-02,soft,,80 W,500 ohm,36 W,analyser,AP");
    assertThat(measured.expected().orElseThrow().value()).isCloseTo(36.84, within(0.01));
    assertThat(measured.verdict()).isEqualTo(Measured.Verdict.WITHIN);
  }

  @ParameterizedTest
  @CsvSource({"47.9 W,TOO_LOW", "48 W,WITHIN", "60 W,WITHIN", "72 W,WITHIN", "72.1 W,TOO_HIGH"})
  void judgedAgainstTheToleranceOfTheUnit(String watts, Measured.Verdict verdict) {
    Measured measured =
        measured("EQ-1,2026-03-02,pulsed-cut,2,60 W,500 ohm," + watts + ",within the burst,AP");
    assertThat(measured.verdict()).isEqualTo(verdict);
    assertThat(measured.tolerated().from().value()).isCloseTo(48, within(1e-9));
    assertThat(measured.tolerated().to().value()).isCloseTo(72, within(1e-9));
  }

  @Test
  void belowTheShareOfRatedPowerNothingIsJudged() {
    assertThat(measured("EQ-1,2026-03-02,pulsed-cut,2,10 W,500 ohm,3 W,analyser,AP").verdict())
        .isEqualTo(Measured.Verdict.TOO_SMALL_TO_JUDGE);
    assertThat(measured("EQ-1,2026-03-02,pulsed-cut,2,15 W,500 ohm,3 W,analyser,AP").verdict())
        .isEqualTo(Measured.Verdict.TOO_LOW);
  }

  @Test
  void outsideThePublishedLoadsNothingIsExpected() {
    Measured measured = measured("EQ-1,2026-03-02,pulsed-cut,2,60 W,2500 ohm,60 W,analyser,AP");
    assertThat(measured.verdict()).isEqualTo(Measured.Verdict.NOT_PUBLISHED);
    assertThat(measured.expected()).isEmpty();
  }

  @Test
  void argonIsNotJudged() {
    assertThat(measured("EQ-2,2026-03-02,argon,2,,1000 ohm,20 W,analyser,AP").verdict())
        .isEqualTo(Measured.Verdict.NOT_PUBLISHED);
  }
}
