package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class OutputFileTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/index.html",
        "../index.html",
        "rooms/../../index.html",
        "rooms/..",
        "./index.html",
        "rooms//room.html",
        "rooms/",
        "rooms\\room.html",
        "C:/index.html",
        "index.html:stream",
        "a b.html",
        "räume/raum.html",
        "rooms/line\nbreak.html",
        "nul",
        "rooms/Con.html",
        "com1.txt",
        "trailing.",
        "-rf",
        "~root",
        "null\0byte"
      })
  void pathThatCouldMeanSomethingElse_isRefused(String path) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OutputFile.text(path, ""))
        .withMessageContaining("not a path of an output file");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html",
        "c/room-2_EQ-0417/index.html",
        "cards/room-2-eq-0417-settings.pdf",
        ".nojekyll",
        "console.html",
        "fonts/Atkinson.v2.woff2"
      })
  void plainPath_isTaken(String path) {
    assertThat(OutputFile.text(path, "x").path()).isEqualTo(path);
  }

  @Test
  void pathLongerThanSomeSystemsHold_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OutputFile.text("a/".repeat(100) + "b", ""));
  }

  @Test
  void filesAreEqualByContent() {
    assertThat(OutputFile.text("a", "é"))
        .isEqualTo(new OutputFile("a", new byte[] {(byte) 0xC3, (byte) 0xA9}))
        .hasSameHashCodeAs(OutputFile.text("a", "é"))
        .isNotEqualTo(OutputFile.text("a", "e"))
        .isNotEqualTo(OutputFile.text("b", "é"));
  }
}
