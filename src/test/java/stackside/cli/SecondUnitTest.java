package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.publish.LocalDisk;

/**
 * A second, small unit with one room, names in another language and American spelling: nothing of
 * the program is fitted to the demonstration.
 */
final class SecondUnitTest {

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int draft() {
    Environment surroundings =
        new Environment(
            Path.of("").toAbsolutePath(),
            () -> LocalDate.of(2026, 3, 2),
            new LocalDisk(),
            Environment.Audience.PIPE,
            new ByteArrayInputStream(new byte[0]));
    return new Cli(out, err, surroundings)
        .run("draft", "src/test/resources/units/cholla", "--out", folder + "/draft");
  }

  @Test
  void unitWithOneRoomInAnotherLanguage_draftsWithoutAProblem() throws IOException {
    assertThat(draft()).as("nothing of it is signed").isEqualTo(4);
    assertThat(err.toString(UTF_8)).doesNotContain("error:", "warning:");
    assertThat(out.toString(UTF_8)).contains("no errors, no warnings");
    assertThat(folder.resolve("draft/cards/room-1-eq-1-settings.pdf")).exists();
    assertThat(folder.resolve("draft/cards/room-1-eq-1-set-up.pdf")).exists();
    String room = Files.readString(folder.resolve("draft/rooms/room-1.html"));
    assertThat(room).contains("lang=\"en-US\"", "Sala 1", "Asa ovalada", "resección");
  }

  @Test
  void pagesOfTheSecondUnit_nameNothingOfTheDemonstration() throws IOException {
    draft();
    for (Path page : pages()) {
      assertThat(Files.readString(page))
          .as(page.toString())
          .doesNotContain("Saltings", "Cordgrass", "Sandwort", "Orache", "Restharrow");
    }
  }

  private List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve("draft"))) {
      List<Path> pages =
          files
              .filter(file -> file.toString().endsWith(".html"))
              .filter(file -> !file.toString().contains("rules"))
              .toList();
      assertThat(pages).isNotEmpty();
      return pages;
    }
  }
}
