package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.source.Fault;
import stackside.source.Problem;

/** Each fault of reading is in the list and has a page, and the examples of the page are true. */
final class ReadingFaultsTest {
  private static final Path PAGES = Path.of("src/main/resources/stackside/rules");
  private static final Pattern EXAMPLE =
      Pattern.compile("```(?:yaml|csv|markdown) (\\S+)\\n(.*?\\n)```", Pattern.DOTALL);

  /** These cannot be shown by what is written in a file of ordinary size. */
  private static final Set<String> WITHOUT_EXAMPLE =
      Set.of(
          "no-content",
          "unreadable-file",
          "leads-out-of-folder",
          "unknown-file",
          "unknown-template",
          "too-many-files",
          "file-too-large",
          "not-utf-8",
          "hidden-character",
          "too-long",
          "place-to-fill");

  static List<Fault> faults() {
    return ReadingFaults.all();
  }

  @Test
  void list_holdsEveryFaultOfTheClassOnce() {
    List<Object> constants =
        Arrays.stream(ReadingFaults.class.getDeclaredFields())
            .filter(field -> Modifier.isPublic(field.getModifiers()))
            .map(ReadingFaultsTest::value)
            .toList();

    assertThat(constants).hasSizeGreaterThan(35);
    assertThat(faults()).doesNotHaveDuplicates().hasSameElementsAs(cast(constants));
    assertThat(faults()).extracting(Fault::id).doesNotHaveDuplicates();
    assertThat(faults()).extracting(Fault::summary).noneMatch(text -> text.endsWith("."));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void page_hasItsFourHeadingsInOrder(Fault fault) throws IOException {
    assertThat(page(fault).lines().filter(line -> line.startsWith("## ")))
        .containsExactly("## What it checks", "## Why it matters", "## Wrong", "## Right");
  }

  @ParameterizedTest
  @MethodSource("faults")
  void wrongExample_bringsTheFault(Fault fault) throws IOException {
    if (WITHOUT_EXAMPLE.contains(fault.id())) {
      assertThat(EXAMPLE.matcher(page(fault)).find()).isFalse();
      return;
    }
    assertThat(problems(section(fault, "Wrong")))
        .extracting(Problem::fault)
        .isNotEmpty()
        .containsOnly(fault);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void rightExample_bringsNoProblem(Fault fault) throws IOException {
    if (!WITHOUT_EXAMPLE.contains(fault.id())) {
      assertThat(problems(section(fault, "Right"))).isEmpty();
    }
  }

  private static List<Problem> problems(String section) {
    Trial trial = Trial.withMachine();
    Matcher example = EXAMPLE.matcher(section);
    int examples = 0;
    while (example.find()) {
      trial.with(example.group(1), example.group(2));
      examples++;
    }
    assertThat(examples).isPositive();
    return trial.read().problems();
  }

  private static String section(Fault fault, String heading) throws IOException {
    String page = page(fault);
    int start = page.indexOf("## " + heading + "\n");
    int end = page.indexOf("\n## ", start + 1);
    return end < 0 ? page.substring(start) : page.substring(start, end);
  }

  private static String page(Fault fault) throws IOException {
    return Files.readString(PAGES.resolve(fault.id() + ".md"));
  }

  private static Object value(Field field) {
    try {
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  private static List<Fault> cast(List<Object> constants) {
    return constants.stream().map(Fault.class::cast).toList();
  }
}
