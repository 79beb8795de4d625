package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.Units;
import stackside.render.Marking;
import stackside.render.OutputFile;

/**
 * Pages of a tiny unit, compared byte for byte. After an intended change, run {@code mvn test
 * -Dtest=GoldenSiteTest -Dgolden=write} and review the difference like code.
 */
final class GoldenSiteTest {
  private static final Path CASE = Path.of("src/test/resources/golden/tiny");
  private static final List<OutputFile> FILES =
      SiteRenderer.render(
          DemonstrationSite.publication(Units.whole(CASE.resolve("in")), Marking.DRAFT), List.of());

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html",
        "rooms/room-1.html",
        "choose/room-1.html",
        "answers/room-1/tern-flat.html",
        "modes/tern/cut.html",
        "drills/no-effect.html",
        "handbook/current.html",
        "coverage.html",
        "assets/search-index.js"
      })
  void aPageIsAsItWasRead(String path) throws IOException {
    String made = SiteRendererTest.text(FILES, path);
    Path golden = CASE.resolve("out").resolve(path);
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(golden.getParent());
      Files.writeString(golden, made);
    }
    assertThat(made).isEqualTo(Files.readString(golden));
  }

  @Test
  void noGoldenFileIsLeftOver() throws IOException {
    try (Stream<Path> files = Files.walk(CASE.resolve("out"))) {
      List<String> paths = FILES.stream().map(OutputFile::path).toList();
      assertThat(files.filter(Files::isRegularFile))
          .hasSize(9)
          .allSatisfy(
              file ->
                  assertThat(paths)
                      .contains(
                          CASE.resolve("out").relativize(file).toString().replace('\\', '/')));
    }
  }
}
