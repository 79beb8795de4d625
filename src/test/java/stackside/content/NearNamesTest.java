package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which names count as near, and in which order. */
final class NearNamesTest {

  @ParameterizedTest
  @CsvSource({
    "snare, snare, 0",
    "snare, snares, 1",
    "snare, snre, 1",
    "snare, snore, 1",
    "snare, sanre, 1",
    "snare, '', 5",
    "ca, abc, 3",
  })
  void distance_countsOneForASwapOfNeighbours(String a, String b, int distance) {
    assertThat(NearNames.distance(a, b)).isEqualTo(distance);
    assertThat(NearNames.distance(b, a)).isEqualTo(distance);
  }

  @Test
  void nearest_standsFirstAndAtMostFourAreNamed() {
    assertThat(NearNames.of("bipolra", List.of("bipolars", "bipolar", "monopolar")))
        .containsExactly("bipolar", "bipolars");
    assertThat(NearNames.of("abcdef", List.of("abcdeg", "abcdeh", "abcdei", "abcdej", "abcdek")))
        .containsExactly("abcdeg", "abcdeh", "abcdei", "abcdej");
  }

  @Test
  void moreThanAThirdApart_isNotNear() {
    assertThat(NearNames.of("plate", List.of("plot"))).isEmpty();
    assertThat(NearNames.of("ab", List.of("ac"))).isEmpty();
  }

  @Test
  void otherDigits_areNeverGuessed() {
    assertThat(NearNames.of("mono-2", List.of("mono-1", "mono-3"))).isEmpty();
    assertThat(NearNames.of("mno-2", List.of("mono-1", "mono-2"))).containsExactly("mono-2");
    assertThat(NearNames.of("EQ-0417", List.of("EQ-0471"))).isEmpty();
  }

  @Test
  void capitals_doNotCount() {
    assertThat(NearNames.of("ID", List.of("id"))).containsExactly("id");
  }

  @Test
  void question_namesAllOfThem() {
    assertThat(NearNames.question(List.of("a"))).isEqualTo("did you mean 'a'?");
    assertThat(NearNames.question(List.of("a", "b", "c")))
        .isEqualTo("did you mean 'a', 'b' or 'c'?");
  }
}
