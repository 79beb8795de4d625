package stackside.render.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stackside.inspect.EditedUnit;

/** Letter heights on the outlines of the program's own fonts, and the resulting type sizes. */
final class LetterHeightsTest {

  /** Measured when the typeface was chosen: H 0.668 em, x 0.496 em. */
  @Test
  void capitalsAndSmallLettersOfTheTypeface() {
    LetterHeights letters = LetterHeights.measured();
    assertThat(letters.capital()).isCloseTo(0.668, within(0.0005));
    assertThat(letters.small()).isCloseTo(0.496, within(0.0005));
  }

  /**
   * An x-height of 2.54 mm requires 14.5 points; capitals of 16 minutes at 1,500 mm require 29.6.
   */
  @Test
  void sizesForSevenHundredAndFifteenHundredMillimetres() {
    TypeScale scale =
        TypeScale.of(EditedUnit.untouched().publication().unit().details().readingDistance());
    assertThat(scale.near()).isCloseTo(14.6, within(0.11));
    assertThat(scale.far()).isCloseTo(29.7, within(0.11));
    assertThat(scale.numeral()).isCloseTo(17.3, within(0.11));
    assertThat(scale.small()).isEqualTo(10);
  }

  @Test
  void fartherReadersGetLargerType() {
    TypeScale scale =
        TypeScale.of(
            EditedUnit.after(
                    """
                    === unit.yaml
                    -reading-distance: {near: 700 mm, far: 1500 mm}
                    +reading-distance: {near: 1000 mm, far: 2000 mm}
                    """)
                .publication()
                .unit()
                .details()
                .readingDistance());
    assertThat(scale.near()).isGreaterThan(19.6);
    assertThat(scale.far()).isGreaterThan(39.4);
  }
}
