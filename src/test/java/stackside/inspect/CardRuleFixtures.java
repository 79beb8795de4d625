package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import stackside.ContentEdit;
import stackside.Units;
import stackside.source.Problem;

/**
 * Runs the fixtures of the word rule that the test class is named after: each a patch of the unit
 * {@code cards} under {@code card-rules/<rule-id>/}, whose cards must bring exactly the problems
 * that it expects, of this rule and of all others.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class CardRuleFixtures {

  static final Path FOLDER = Path.of("src/test/resources/card-rules");

  static String id(String className) {
    return className.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  static List<Path> fixtures(String id) {
    if (!Files.isDirectory(FOLDER.resolve(id))) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(FOLDER.resolve(id))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @TestFactory
  Stream<DynamicTest> fixtures() {
    String id = id(getClass().getSimpleName().replaceFirst("Test$", ""));
    List<Path> fixtures = fixtures(id);
    assertThat(fixtures).as("fixtures of " + id).isNotEmpty();
    return fixtures.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(), () -> bringsWhatItExpects(file)));
  }

  private static void bringsWhatItExpects(Path file) throws IOException {
    EditedUnit unit = EditedUnit.after(Files.readString(file));
    List<Problem> problems = unit.problems();
    List<ContentEdit.Expected> found =
        problems.stream()
            .map(p -> new ContentEdit.Expected(p.at().file(), p.at().line(), p.fault().id()))
            .distinct()
            .sorted()
            .toList();
    assertThat(found)
        .as(Units.printed(problems, unit.reading().sources()))
        .isEqualTo(unit.edit().expected());
  }
}
