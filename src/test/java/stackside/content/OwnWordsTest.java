package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading a unit's own words: each line that would not be said is told. */
final class OwnWordsTest {
  private static final String FILE = "templates/words/en-GB.txt";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "menu.rooms Theatres|:1:1+19: this line has no '=' [no-sense]",
        "menu.roms = Theatres|:1:1+9: the program says nothing under 'menu.roms' [unknown-key]",
        "menu.rooms =|:1:1+10: 'menu.rooms' has no words [no-value]",
        "card.argon = argon|:1:14+5: these words have no place for {0} [no-sense]",
        "card.argon = argon {0} {1}|:1:14+13: the program fills in nothing at {1} [no-sense]",
        "card.destroy = Destroy [0].|:1:16+12: the program fills in nothing at [0] [no-sense]"
      })
  void aLineThatCannotBeSaid_isAnError(String line, String told) {
    assertThat(Trial.bare().with(FILE, line + "\n").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem).startsWith(FILE + told));
  }

  @Test
  void twoLinesForOneKey_areAnError() {
    assertThat(Trial.bare().with(FILE, "menu.rooms = A\nmenu.rooms = B\n").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem).contains("'menu.rooms' has words already"));
  }

  @Test
  void wordsOfAnotherLanguage_areNoTemplate() {
    assertThat(Trial.bare().with("templates/words/fr.txt", "menu.rooms = Salles\n").problems())
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem)
                    .contains("'templates/words/fr.txt' replaces no file of the program"));
  }

  @Test
  void wordsAreReadWithTheirPlaces() {
    assertThat(
            Trial.bare()
                .with(FILE, "# ours\n\n  menu.rooms =  Theatres  \n")
                .read()
                .unit()
                .orElseThrow()
                .ownWords()
                .get("menu.rooms"))
        .satisfies(
            words -> {
              assertThat(words.value()).isEqualTo("Theatres");
              assertThat(words.at().toString()).isEqualTo(FILE + ":3:17");
            });
  }
}
