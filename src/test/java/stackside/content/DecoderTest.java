package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Files that are no usable text. */
final class DecoderTest {

  @Test
  void utf16_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """
                        .getBytes(StandardCharsets.UTF_16))
                .problems())
        .containsExactly(
            "instruments.yaml:1:1+0: the file is saved as UTF-16, not as UTF-8 [not-utf-8] | save it again with the encoding UTF-8");
  }

  @Test
  void utf16WithoutMark_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """
                        .getBytes(StandardCharsets.UTF_16LE))
                .problems())
        .containsExactly(
            "instruments.yaml:1:1+0: the file is saved as UTF-16, not as UTF-8 [not-utf-8] | save it again with the encoding UTF-8");
  }

  @Test
  void latin1_pointsAtTheFirstBadCharacter() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              - {id: b, name: Sné, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """
                        .getBytes(StandardCharsets.ISO_8859_1))
                .problems())
        .containsExactly(
            "instruments.yaml:2:19+1: a character here is not saved as UTF-8 [not-utf-8] | save the file again with the encoding UTF-8");
  }

  @Test
  void hiddenSpace_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    "- {id: oval-snare-15, name: Oval\u200bsnare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}\n")
                .problems())
        .containsExactly(
            "instruments.yaml:1:33+1: there is a hidden character here (U+200B) [hidden-character] | delete it and type the text again");
  }

  @Test
  void turnedDirection_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    "- {id: oval-snare-15, name: Oval \u202esnare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}\n")
                .problems())
        .containsExactly(
            "instruments.yaml:1:34+1: there is a hidden character here (U+202E) [hidden-character] | delete it and type the text again");
  }

  @Test
  void lineSeparator_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    "- {id: oval-snare-15, name: Oval\u2028snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}\n")
                .problems())
        .containsExactly(
            "instruments.yaml:1:33+1: there is a hidden character here (U+2028) [hidden-character] | delete it and type the text again");
  }

  @Test
  void controlCharacter_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    "- {id: oval-snare-15, name: Oval\007snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}\n")
                .problems())
        .containsExactly(
            "instruments.yaml:1:33+1: there is a hidden character here (U+0007) [hidden-character] | delete it and type the text again");
  }

  @Test
  void controlCharacterByEscape_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - {id: oval-snare-15, name: "Oval\\asnare", kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+13: there is a hidden character here (U+0007) [hidden-character] | delete it and type the text again");
  }

  @Test
  void halfACharacterByEscape_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - {id: oval-snare-15, name: "Oval\\ud800snare", kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+17: there is a hidden character here (U+D800) [hidden-character] | delete it and type the text again");
  }

  @Test
  void emptyFile_isRefused() {
    assertThat(Trial.bare().with("instruments.yaml", "").problems())
        .containsExactly(
            "instruments.yaml:1:1+0: the file is empty [empty-file] | write its content, or remove the file");
  }

  @Test
  void commentsAlone_areAnEmptyFile() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              # nothing yet
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:1+0: the file is empty [empty-file] | write its content, or remove the file");
  }

  @Test
  void emptyCsv_isRefused() {
    assertThat(Trial.bare().with("assets.csv", "\n\n").problems())
        .containsExactly(
            "assets.csv:1:1+0: the file is empty [empty-file] | write its content, or remove the file");
  }
}
