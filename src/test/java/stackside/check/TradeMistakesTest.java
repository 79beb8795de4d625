package stackside.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.source.Problem;

/**
 * Single mistakes that a unit lead really makes, each an edit of the demonstration unit that comes
 * out as one clear message. A file under {@code mistakes/} tells the story behind {@code #}, says
 * the message behind {@code says:}, and holds the edit.
 */
final class TradeMistakesTest {

  private static final Path CONTENT = Path.of("content");
  private static final Path MISTAKES = Path.of("src/test/resources/mistakes");

  static List<Path> mistakes() throws IOException {
    try (Stream<Path> files = Files.list(MISTAKES)) {
      return files.sorted().toList();
    }
  }

  @Test
  void thereAreAtLeastTwenty() throws IOException {
    assertThat(mistakes()).hasSizeGreaterThanOrEqualTo(20);
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void comesOutAsOneClearMessage(Path file) {
    String text = CheckedEdit.text(file);
    CheckedEdit judged = CheckedEdit.after(CONTENT, text.substring(text.indexOf("=== ")));
    assertThat(judged.problems().stream().map(TradeMistakesTest::words))
        .as(judged.print())
        .containsExactly(said(text));
  }

  /** The message without line and column, which move as the demonstration grows. */
  private static String words(Problem problem) {
    return "%s: %s: %s [%s]%s"
        .formatted(
            problem.at().file(),
            problem.severity().word(),
            problem.message(),
            problem.fault().id(),
            problem.help().map(help -> "\nmend: " + help).orElse(""));
  }

  private static String said(String text) {
    return text.lines()
        .filter(line -> line.matches("(says|mend): .*"))
        .map(line -> line.replaceFirst("^says: ", ""))
        .collect(Collectors.joining("\n"));
  }
}
