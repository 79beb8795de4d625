package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast and lightness. The luminance is that of WCAG 2.2 (read in the w3c/wcag repository), the
 * ratio is from memory; the values were computed when the rules were laid down.
 */
final class ColourTest {

  private static Colour colour(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new Colour(rgb >> 16, (rgb >> 8) & 0xff, rgb & 0xff);
  }

  @ParameterizedTest
  @CsvSource({
    "000000, FFFFFF, 21.00",
    "FFD400, FFFFFF, 1.43",
    "9B2423, 005387, 1.03",
    "767676, FFFFFF, 4.54"
  })
  void contrastOfTwoColours(String one, String other, double ratio) {
    assertThat(colour(one).contrast(colour(other))).isCloseTo(ratio, within(0.01));
    assertThat(colour(other).contrast(colour(one))).isCloseTo(ratio, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({"FFD400, 86", "005387, 34", "9B2423, 35", "237F52, 47", "FFF6CC, 97", "767676, 50"})
  void lightnessOfAColour(String hex, double lightness) {
    assertThat(colour(hex).lightness()).isCloseTo(lightness, within(0.6));
  }

  @Test
  void inkIsNoHueAndYellowIs() {
    assertThat(colour("14171A").coloured()).isFalse();
    assertThat(colour("FFD400").coloured()).isTrue();
  }
}
