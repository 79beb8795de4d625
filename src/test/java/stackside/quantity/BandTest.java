package stackside.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BandTest {

  private static Band<Millimetres> band(String text) {
    return Band.parse(text, Millimetres.MEASURE);
  }

  @ParameterizedTest
  @CsvSource({
    "10 mm to 20 mm, 10, true",
    "10 mm to 20 mm, 20, false",
    "10 mm to 20 mm, 9.9, false",
    "20 mm and over, 20, true",
    "under 10 mm, 10, false",
    "any, 500, true"
  })
  void band_holdsItsLowerEndOnly(String text, double size, boolean held) {
    assertThat(band(text).holds(new Millimetres(size))).isEqualTo(held);
  }

  @ParameterizedTest
  @CsvSource({
    "under 10 mm, 10 mm to 20 mm, false",
    "under 11 mm, 10 mm to 20 mm, true",
    "any, 10 mm to 20 mm, true",
    "20 mm and over, 10 mm to 20 mm, false"
  })
  void overlap_isMutual(String one, String other, boolean overlap) {
    assertThat(band(one).overlaps(band(other))).isEqualTo(overlap);
    assertThat(band(other).overlaps(band(one))).isEqualTo(overlap);
  }

  @Test
  void openBand_coversAndIsNotCovered() {
    assertThat(band("10 mm and over").covers(band("10 mm to 20 mm"))).isTrue();
    assertThat(band("10 mm to 20 mm").covers(band("10 mm and over"))).isFalse();
    assertThat(band("10 mm to 20 mm").covers(band("under 20 mm"))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"10 mm to 20 mm", "20 mm and over", "under 10 mm", "any"})
  void text_readsBack(String text) {
    assertThat(band(text).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20 mm to 10 mm | '20 mm to 10 mm' is an empty range: its upper end is not above its lower end",
        "10 to 20 mm | '10' has no unit",
        "about 10 mm | 'about 10 mm' is not a range of lengths"
      })
  void unreadableBand_saysWhy(String text, String problem) {
    assertThatThrownBy(() -> band(text)).hasMessage(problem);
  }
}
