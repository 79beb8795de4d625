package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is absurd in size is refused whole, in a sentence. */
final class AbsurdSizesTest {

  @Test
  void lineOfAWholeFile_isRefused() {
    assertThat(Trial.bare().with("instruments.yaml", "#" + "x".repeat(25_000)).problems())
        .contains(
            "instruments.yaml:1:1+1: this line is 25001 characters long [too-long]"
                + " | look for something pasted into it by mistake");
  }

  @Test
  void longestText_isRead() {
    assertThat(Trial.bare().with("instruments.yaml", "#" + "x".repeat(24_999)).messages())
        .noneMatch(message -> message.contains("characters long"));
  }

  @Test
  void yamlOfAHundredThousandPieces_isRefused() {
    assertThat(Trial.bare().with("instruments.yaml", "- a\n".repeat(100_000)).messages())
        .contains("the file holds more than 100000 keys and values");
  }

  @Test
  void sheetOfFortyThousandLines_isRefused() {
    assertThat(
            Trial.withMachine().with("assets.csv", Trial.ASSETS + "\n".repeat(40_000)).messages())
        .contains("the file has more than 40000 lines");
  }
}
