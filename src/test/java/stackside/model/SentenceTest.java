package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SentenceTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "EMR",
        "ESD of a flat lesion",
        "X-ray",
        "T1 lesion",
        "Barrett's segment",
        "pH probe",
        "E",
        ""
      })
  void namesAndAbbreviationsStayAsTheyAre(String title) {
    assertThat(Sentence.within(title)).isEqualTo(title);
  }

  @ParameterizedTest
  @CsvSource({
    "Resection, resection",
    "Ascending colon, ascending colon",
    "Non-lifting EMR, non-lifting EMR",
    "A flat lesion, a flat lesion",
    "Öse, öse"
  })
  void ordinaryWordsBeginSmall(String title, String within) {
    assertThat(Sentence.within(title)).isEqualTo(within);
  }
}
