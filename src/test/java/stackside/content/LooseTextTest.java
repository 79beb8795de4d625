package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts without straight quotation marks that YAML reads otherwise than their author. */
final class LooseTextTest {
  private static final String CURLY =
      " there is a curly quotation mark here, where a straight one belongs [curly-quotation-mark]"
          + " | put the text between straight quotation marks, \" or '";
  private static final String COMMENT =
      " is not read, because '#' begins a comment [text-cut-short] | put the whole text in quotes if"
          + " these words belong to it; if they are a comment, leave two spaces before '# '";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{do: Look, see: “None”}",
        "{do: Look, see: “None, or the plan”}",
        "{do: Look, see: “None: foot off, hold still”}",
        "{do: Look, see: ‘None, one, two’}"
      })
  void aTextInCurlyMarks_isNamedThereAndNothingElseIs(String check) {
    assertThat(Trial.drill("{do: Look at the plug}", check).problems())
        .hasSize(1)
        .allMatch(
            problem -> problem.startsWith("drills/no-effect.yaml:5:26") && problem.endsWith(CURLY),
            CURLY);
  }

  @Test
  void aStraightMarkClosedWithACurlyOne_isNamedThere() {
    assertThat(Trial.drill("{do: Look at the plug}", "{do: \"Look, there”, see: Green}").problems())
        .containsExactly("drills/no-effect.yaml:5:27+1:" + CURLY);
  }

  @Test
  void aListOfTextsInCurlyMarks_isNamedAtEach() {
    assertThat(
            Trial.bare()
                .with(
                    "unit.yaml",
                    Trial.unitFile()
                        + "make-safe: [“None: foot off, hold still.”, See an effect.]\n")
                .problems())
        .hasSize(1)
        .allMatch(problem -> problem.endsWith(CURLY));
  }

  @Test
  void curlyMarksWithinStraightOnes_stay() {
    assertThat(Trial.drill("Look at the plug", "\"“Ready” on the screen\"").problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Foot off. See page #2. Hold still.", "Foot off. Hold # 2 times."})
  void aTextCutByAHash_isNamedWithWhatIsLost(String text) {
    assertThat(Trial.drill("make-safe: Foot off.", "make-safe: " + text).problems())
        .hasSize(1)
        .allMatch(
            problem -> problem.contains("'" + text.substring(text.indexOf('#')) + "'" + COMMENT),
            COMMENT);
  }

  @Test
  void aTextCutByAHashBetweenBrackets_isNamedThereToo() {
    assertThat(Trial.drill("{do: Look at the plug}", "{do: Look at plug #2 there}").problems())
        .containsExactly("drills/no-effect.yaml:5:28+10: '#2 there}]'" + COMMENT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Foot off, hold still.  # as agreed", "\"Foot off. See page #2.\""})
  void aCommentSetOff_orAHashInQuotes_isNoMistake(String text) {
    assertThat(Trial.drill("make-safe: Foot off.", "make-safe: " + text).problems()).isEmpty();
  }

  @Test
  void aDecimalCommaBetweenBrackets_isOneMistake() {
    assertThat(
            Trial.instruments(
                    "- {id: oval, name: Oval, kind: monopolar, connector: pin-3, rated-voltage: 0,8 kV peak}\n")
                .problems())
        .containsExactly(
            "instruments.yaml:1:76+11: '0,8 kV peak' has a decimal comma [not-a-quantity] | write '0.8 kV peak': a point, not a comma");
  }

  @Test
  void aDecimalCommaInABand_isNamed() {
    assertThat(
            Trial.bare()
                .with(
                    "lesions.yaml",
                    Trial.LESIONS.replace("name: Flat,", "name: Flat, size: \"under 10,5 mm\","))
                .problems())
        .containsExactly(
            "lesions.yaml:2:40+15: 'under 10,5 mm' has a decimal comma [not-a-quantity] | write 'under 10.5 mm': a point, not a comma");
  }
}
