package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.source.Location;

final class ExcerptTest {

  private static String excerpt(String line, int column, int length) {
    return String.join("\n", Excerpt.of(new Location("a.yaml", 14, column, length), line));
  }

  @Test
  void underlinesTheSmallestStretch() {
    assertThat(excerpt("  limit: 60 W", 10, 4))
        .isEqualTo("  14 |   limit: 60 W\n     |          ^^^^");
  }

  @Test
  void pointsAtAPlaceWithoutLength() {
    assertThat(excerpt("limit:", 7, 0)).endsWith("|       ^");
  }

  @Test
  void tabsReachToTheNextStop() {
    assertThat(excerpt("a\tb:\t60 W", 6, 4)).isEqualTo("  14 | a   b:  60 W\n     |         ^^^^");
  }

  @Test
  void wideCharactersTakeTwoColumns() {
    assertThat(excerpt("名: 値段 x", 4, 2)).isEqualTo("  14 | 名: 値段 x\n     |     ^^^^");
  }

  @Test
  void combiningMarksTakeNone() {
    assertThat(excerpt("e\u0301: x", 5, 1)).endsWith("|    ^");
  }

  @Test
  void charactersOfTwoUnitsAreNotCutInHalf() {
    assertThat(excerpt("\ud83d\ude00\ud83d\ude00 x", 2, 1)).contains("\ud83d\ude00\ud83d\ude00 x");
    assertThat(excerpt("\ud83d\ude00 x", 4, 1)).endsWith("|    ^");
  }

  @Test
  void whatPlaysTricksWithATerminal_isMarked() {
    assertThat(excerpt("a\u001b[31mb\u202ec\u0007", 1, 1))
        .isEqualTo("  14 | a\ufffd[31mb\ufffdc\ufffd\n     | ^");
  }

  @Test
  void endPastTheLine_isTheEndOfTheLine() {
    assertThat(excerpt("abc", 2, 500)).endsWith("|  ^^");
    assertThat(excerpt("abc", 90, 500)).endsWith("|    ^");
  }

  @Test
  void longLine_isCutAroundTheStretch() {
    String line = "x".repeat(300) + "HERE" + "y".repeat(300);
    String[] lines = excerpt(line, 301, 4).split("\n", -1);
    assertThat(lines[0]).startsWith("  14 | …x").endsWith("y…").hasSizeLessThan(140);
    int under = lines[1].indexOf('^');
    assertThat(lines[0].substring(under, under + 4)).isEqualTo("HERE");
  }
}
