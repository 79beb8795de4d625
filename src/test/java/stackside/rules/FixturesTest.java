package stackside.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stackside.ContentEdit;
import stackside.Units;
import stackside.check.CheckedEdit;
import stackside.inspect.EditedUnit;
import stackside.source.Problem;

/**
 * Runs every fixture: each must bring exactly the problems that it expects, of its own rule and of
 * all others. {@code -Dfixtures=REGEX} runs those whose path holds it.
 */
final class FixturesTest {

  @TestFactory
  Stream<DynamicTest> fixtures() {
    Pattern asked = Pattern.compile(System.getProperty("fixtures", ""));
    List<DynamicTest> tests =
        Stream.concat(
                Fixtures.all(Fixtures.OF_CONTENT).stream()
                    .filter(file -> asked.matcher(file.toString()).find())
                    .map(file -> test(file, () -> contentBringsWhatIsExpected(file))),
                Fixtures.all(Fixtures.OF_CARDS).stream()
                    .filter(file -> asked.matcher(file.toString()).find())
                    .map(file -> test(file, () -> cardsBringWhatIsExpected(file))))
            .toList();
    assertThat(tests).as("fixtures that were asked for").isNotEmpty();
    return tests.stream();
  }

  private static DynamicTest test(Path file, Runnable runs) {
    return DynamicTest.dynamicTest(
        Fixtures.name(file.getParent()) + "/" + Fixtures.name(file), runs::run);
  }

  private static void contentBringsWhatIsExpected(Path file) {
    CheckedEdit judged = CheckedEdit.after(CheckedEdit.BASE, Fixtures.text(file));
    assertThat(judged.found()).as(judged.print()).isEqualTo(judged.edit().expected());
  }

  private static void cardsBringWhatIsExpected(Path file) {
    EditedUnit unit = EditedUnit.after(Fixtures.text(file));
    List<Problem> problems = unit.problems();
    assertThat(ContentEdit.Expected.of(problems))
        .as(Units.printed(problems, unit.reading().sources()))
        .isEqualTo(unit.edit().expected());
  }
}
