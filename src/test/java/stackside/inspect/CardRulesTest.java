package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.check.Catalogue;
import stackside.check.RulePage;
import stackside.source.Fault;

/** Holds what every rule about cards must have, for all rules to come. */
final class CardRulesTest {

  private static final Path TESTS = Path.of("src/test/java/stackside/inspect");
  private static final Path CLASSES = Path.of("src/main/java/stackside/inspect");

  static List<CardRule> rules() {
    return CardRules.rules();
  }

  static List<Fault> faults() {
    return CardRules.faults();
  }

  @Test
  void cardsOfTheUntouchedUnitHaveNothingWrongWithThem() {
    assertThat(EditedUnit.untouched().problems()).isEmpty();
  }

  @Test
  void idsAreUniqueAmongAllRules() {
    Stream<String> others = Catalogue.rules().stream().map(rule -> rule.fault().id());
    assertThat(Stream.concat(others, faults().stream().map(Fault::id))).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void idIsTheClassNameInKebabCase(CardRule rule) {
    assertThat(rule.fault().id()).isEqualTo(CardRuleFixtures.id(rule.getClass().getSimpleName()));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void summaryIsOneLineWithoutFullStop(Fault fault) {
    assertThat(fault.summary()).matches("[a-zA-Z0-9].*[^.]").hasSizeLessThanOrEqualTo(90);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void pageHasAllFourHeadings(Fault fault) {
    RulePage page = RulePage.of(fault).orElseThrow();
    assertThat(List.of(page.whatItChecks(), page.whyItMatters(), page.wrong(), page.right()))
        .allSatisfy(section -> assertThat(section).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("faults")
  void pageNamesItsSourceAndHowItIsKnown(Fault fault) {
    assertThat(RulePage.of(fault).orElseThrow().whyItMatters())
        .containsPattern(
            "(?i)\\(.*(read|summarised|reproduced|quoted|from memory|judgement|no source|tried"
                + "|computed|guides).*\\)");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleHasATestOfItsName(CardRule rule) {
    assertThat(TESTS.resolve(rule.getClass().getSimpleName() + "Test.java")).isRegularFile();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleHoldsNoState(CardRule rule) {
    assertThat(rule.getClass().getDeclaredFields())
        .allMatch(field -> Modifier.isStatic(field.getModifiers()));
  }

  @Test
  void everyRuleClassIsInTheList() throws IOException {
    List<String> listed = rules().stream().map(rule -> rule.getClass().getSimpleName()).toList();
    try (Stream<Path> classes = Files.list(CLASSES)) {
      assertThat(
              classes
                  .filter(file -> text(file).contains(" implements CardRule "))
                  .map(file -> file.getFileName().toString().replace(".java", "")))
          .containsExactlyInAnyOrderElementsOf(listed);
    }
  }

  @Test
  void everyFixtureFolderBelongsToARuleAndHasBothKinds() throws IOException {
    List<String> ids = rules().stream().map(rule -> rule.fault().id()).toList();
    try (Stream<Path> folders = Files.list(CardRuleFixtures.FOLDER)) {
      assertThat(folders.map(folder -> folder.getFileName().toString()).toList())
          .isNotEmpty()
          .allSatisfy(
              id -> {
                assertThat(ids).contains(id);
                List<String> names =
                    CardRuleFixtures.fixtures(id).stream()
                        .map(file -> file.getFileName().toString())
                        .toList();
                assertThat(names).anyMatch(name -> name.startsWith("fires-"));
                assertThat(names).anyMatch(name -> name.startsWith("quiet-"));
              });
    }
  }

  /** Rules about words: what their pages show as wrong fires in a fixture, the right is quiet. */
  static List<Fault> faultsWithFixtures() {
    return faults().stream()
        .filter(fault -> Files.isDirectory(CardRuleFixtures.FOLDER.resolve(fault.id())))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("faultsWithFixtures")
  void examplesOfThePageStandInFixtures(Fault fault) {
    RulePage page = RulePage.of(fault).orElseThrow();
    assertThat(examples(page.wrong())).isNotEmpty().allMatch(each -> stands(each, fault, "fires-"));
    assertThat(examples(page.right())).isNotEmpty().allMatch(each -> stands(each, fault, "quiet-"));
  }

  private static boolean stands(String example, Fault fault, String kind) {
    return CardRuleFixtures.fixtures(fault.id()).stream()
        .filter(file -> file.getFileName().toString().startsWith(kind))
        .anyMatch(file -> shown(file).contains(example));
  }

  /** What a fixture leaves in the content: lines that stay or come. */
  private static String shown(Path fixture) {
    return text(fixture)
        .lines()
        .filter(line -> line.startsWith("+") || line.startsWith(" "))
        .map(line -> line.substring(1).strip())
        .collect(Collectors.joining("\n"));
  }

  /** Lines of code blocks, and words between single backticks. */
  private static List<String> examples(String section) {
    List<String> examples = new ArrayList<>();
    boolean code = false;
    for (String line : section.lines().toList()) {
      if (line.startsWith("```")) {
        code = !code;
      } else if (code) {
        examples.add(line.strip());
      } else {
        Matcher marked = Pattern.compile("`([^`]+)`").matcher(line);
        while (marked.find()) {
          examples.add(marked.group(1));
        }
      }
    }
    return examples;
  }

  @Test
  void everyRuleStandsInTheTableByNumber() {
    String table = text(Path.of("DEVELOPERS.md"));
    assertThat(faults()).allSatisfy(fault -> assertThat(table).contains("`" + fault.id() + "`"));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
