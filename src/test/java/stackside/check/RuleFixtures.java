package stackside.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

/**
 * Runs the fixtures of the rule that the test class is named after: each a patch of the base unit
 * under {@code rules/<rule-id>/}, which must bring exactly the problems it expects, of this rule
 * and of all others, and no more.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class RuleFixtures {

  static final Path FOLDER = Path.of("src/test/resources/rules");

  /** The id of a rule of this class name: words in kebab case. */
  static String id(String className) {
    return className.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(java.util.Locale.ROOT);
  }

  /** The fixtures of a rule, by name. */
  static List<Path> fixtures(String id) throws IOException {
    Path folder = FOLDER.resolve(id);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  @TestFactory
  Stream<DynamicTest> fixtures() throws IOException {
    String id = id(getClass().getSimpleName().replaceFirst("Test$", ""));
    List<Path> fixtures = fixtures(id);
    assertThat(fixtures).as("fixtures of " + id).isNotEmpty();
    return fixtures.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(), () -> bringsWhatItExpects(file)));
  }

  private static void bringsWhatItExpects(Path file) {
    Judged judged = Judged.after(Judged.BASE, Judged.text(file));
    assertThat(judged.found()).as(judged.print()).isEqualTo(judged.edit().expected());
  }
}
