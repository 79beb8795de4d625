package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same content always gives the same bytes, here and on another computer. */
final class CardBytesTest {

  @TempDir Path folder;

  @Test
  void secondRenderingHasTheSameBytes() {
    assertThat(Demonstration.cards()).isEqualTo(Demonstration.cards());
  }

  @Test
  void anotherProcessWithAnotherLocaleAndTimeZoneMakesTheSameBytes() throws Exception {
    Path out = folder.resolve("digests.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Auckland",
                "-Dfile.encoding=ISO-8859-9",
                "-Djava.awt.headless=true",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                CardDigests.class.getName())
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(process.waitFor()).isZero();
    assertThat(Files.readString(out, StandardCharsets.UTF_8)).isEqualTo(CardDigests.all());
    assertThat(List.of(CardDigests.all().split("\n"))).hasSizeGreaterThan(12);
  }
}
