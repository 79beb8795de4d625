package stackside.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.content.ReadingFaults;
import stackside.derive.edition.RecordFaults;
import stackside.derive.signed.LedgerFaults;
import stackside.inspect.CardRules;
import stackside.source.Fault;
import stackside.source.Problem;

/** Holds what every rule must have, for all rules to come. */
final class CatalogueTest {

  private static final Path PAGES = Path.of("src/main/resources/stackside/rules");
  private static final Path TESTS = Path.of("src/test/java/stackside/check");
  private static final Path CLASSES = Path.of("src/main/java/stackside/check");

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "^```(?:yaml|csv) (?<file>\\S+)\n(?<text>.*?)^```", Pattern.DOTALL | Pattern.MULTILINE);

  static List<Rule> rules() {
    return Catalogue.rules();
  }

  @Test
  void baseUnitHasNothingWrongWithIt() {
    Judged judged = Judged.after(Judged.BASE, "");
    assertThat(judged.problems()).as(judged.print()).isEmpty();
  }

  @Test
  void idsAreUnique() {
    assertThat(ids()).doesNotHaveDuplicates();
  }

  @Test
  void thereAreAtLeastFortyFiveRules() {
    assertThat(rules()).hasSizeGreaterThanOrEqualTo(45);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void idIsTheClassNameInKebabCase(Rule rule) {
    assertThat(rule.fault().id()).isEqualTo(RuleFixtures.id(rule.getClass().getSimpleName()));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void summaryIsOneLineWithoutFullStop(Rule rule) {
    assertThat(rule.fault().summary())
        .matches("[a-zA-Z0-9].*[^.]")
        .hasSizeLessThanOrEqualTo(90)
        .doesNotContain("\n");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void pageHasAllFourHeadings(Rule rule) {
    RulePage page = RulePage.of(rule.fault()).orElseThrow();
    assertThat(List.of(page.whatItChecks(), page.whyItMatters(), page.wrong(), page.right()))
        .allSatisfy(section -> assertThat(section).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleHasATestOfItsName(Rule rule) {
    assertThat(TESTS.resolve(rule.getClass().getSimpleName() + "Test.java")).isRegularFile();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleHasFixturesThatFireAndFixturesThatAreQuiet(Rule rule) throws IOException {
    String id = rule.fault().id();
    List<Path> fixtures = RuleFixtures.fixtures(id);
    assertThat(fixtures).anyMatch(file -> name(file).startsWith("fires-"));
    assertThat(fixtures).anyMatch(file -> name(file).startsWith("quiet-"));
    assertThat(fixtures)
        .allSatisfy(
            file -> {
              assertThat(name(file)).matches("(fires|quiet)-.*\\.edit");
              assertThat(expects(file, id)).isEqualTo(name(file).startsWith("fires-"));
            });
  }

  private static boolean expects(Path file, String id) {
    return ContentEditExpectations.of(file).contains(id);
  }

  /** The ids that a fixture expects somewhere. */
  private static final class ContentEditExpectations {
    private static final Pattern MARK = Pattern.compile("# expect: (?<ids>.*)");

    static Set<String> of(Path file) {
      Matcher mark = MARK.matcher(Judged.text(file));
      Set<String> ids = new TreeSet<>();
      while (mark.find()) {
        ids.addAll(List.of(mark.group("ids").strip().split(",\\s*")));
      }
      return ids;
    }
  }

  @Test
  void everyFixtureFolderBelongsToARule() throws IOException {
    try (Stream<Path> folders = Files.list(RuleFixtures.FOLDER).filter(Files::isDirectory)) {
      assertThat(folders.map(CatalogueTest::name)).isSubsetOf(ids());
    }
  }

  @Test
  void everyPageBelongsToARuleOrAFaultOfReading() throws IOException {
    Set<String> known =
        Stream.of(
                ids().stream(),
                ReadingFaults.all().stream().map(Fault::id),
                LedgerFaults.all().stream().map(Fault::id),
                RecordFaults.all().stream().map(Fault::id),
                CardRules.faults().stream().map(Fault::id))
            .flatMap(each -> each)
            .collect(Collectors.toSet());
    try (Stream<Path> pages = Files.list(PAGES)) {
      assertThat(pages.map(page -> name(page).replace(".md", ""))).isSubsetOf(known);
    }
  }

  @Test
  void everyRuleClassIsInTheCatalogue() throws IOException {
    Set<String> listed =
        rules().stream().map(rule -> rule.getClass().getSimpleName()).collect(Collectors.toSet());
    try (Stream<Path> classes = Files.list(CLASSES)) {
      assertThat(
              classes
                  .filter(
                      file ->
                          Judged.text(file)
                              .matches("(?s).*class \\w+ implements (Rule|Question) .*"))
                  .map(file -> name(file).replace(".java", "")))
          .containsExactlyInAnyOrderElementsOf(listed);
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleHoldsNoState(Rule rule) {
    assertThat(rule.getClass().getDeclaredFields())
        .allMatch(field -> java.lang.reflect.Modifier.isStatic(field.getModifiers()));
  }

  /**
   * The right example of a page stands in the base unit as it is; put in its place, the wrong one
   * brings problems of this rule and of no other.
   */
  @ParameterizedTest
  @MethodSource("rules")
  void examplesOnThePageAreTrue(Rule rule) {
    RulePage page = RulePage.of(rule.fault()).orElseThrow();
    Matcher wrong = EXAMPLE.matcher(page.wrong());
    Matcher right = EXAMPLE.matcher(page.right());
    if (!wrong.find() || !right.find()) {
      return;
    }
    assertThat(wrong.group("file")).isEqualTo(right.group("file"));
    String patch =
        "=== "
            + wrong.group("file")
            + "\n"
            + right
                .group("text")
                .lines()
                .map(line -> "-" + line + "\n")
                .collect(Collectors.joining())
            + wrong
                .group("text")
                .lines()
                .map(line -> "+" + line + "\n")
                .collect(Collectors.joining());
    Judged judged = Judged.after(Judged.BASE, patch);
    assertThat(judged.problems().stream().map(Problem::fault).distinct())
        .as(judged.print())
        .containsExactly(rule.fault());
  }

  private static List<String> ids() {
    return rules().stream().map(rule -> rule.fault().id()).toList();
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }
}
