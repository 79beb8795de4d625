package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heights against the geometry height = 2 × distance × tan(angle / 2), and its small-angle form in
 * NUREG-0700 rev. 2 (read): height = 6.283 × distance × minutes / 21600.
 */
final class ViewingAngleTest {

  @ParameterizedTest
  @CsvSource({
    "700, 16, 3.258",
    "700, 20, 4.072",
    "1500, 16, 6.981",
    "1500, 20, 8.727",
    "1000, 20, 5.818"
  })
  void heightOfAnAngleAtADistance(double distance, double minutes, double height) {
    assertThat(new ViewingAngle(minutes).height(distance)).isCloseTo(height, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({"700, 16", "1000, 20", "1500, 24"})
  void smallAngleFormAgreesToAHundredthOfAMillimetre(double distance, double minutes) {
    assertThat(new ViewingAngle(minutes).height(distance))
        .isCloseTo(6.283 * distance * minutes / 21600, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({"2.54, 600, 14.55"})
  void angleOfAHeightAtADistance(double height, double distance, double minutes) {
    assertThat(ViewingAngle.of(height, distance).arcMinutes()).isCloseTo(minutes, within(0.05));
  }
}
