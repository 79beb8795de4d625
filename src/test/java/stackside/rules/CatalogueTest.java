package stackside.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.check.CheckedEdit;
import stackside.check.ContentRules;
import stackside.check.RulePage;
import stackside.content.ReadingFaults;
import stackside.derive.edition.BookFaults;
import stackside.derive.edition.RecordFaults;
import stackside.derive.signed.LedgerFaults;
import stackside.derive.standing.DatedAhead;
import stackside.inspect.CardRules;
import stackside.inspect.EditedUnit;
import stackside.source.Fault;
import stackside.source.Problem;

/** Holds what every rule must have, about content and about cards, for all rules to come. */
final class CatalogueTest {

  private static final Path PAGES = Path.of("src/main/resources/stackside/rules");
  private static final Path CONTENT_SUBJECTS = Path.of("src/main/java/stackside/check");
  private static final Path CARD_SUBJECTS = Path.of("src/main/java/stackside/inspect");
  private static final Path CARD_TESTS = Path.of("src/test/java/stackside/inspect");

  /** A rule in the list of its subject: its id and the method that finds it. */
  private static final Pattern ENTRY =
      Pattern.compile(
          "(?:error|warning|note|question)\\(\\s*\"(?<id>[a-z0-9-]+)\",\\s*\"[^\"]+\",\\s*"
              + "(?<subject>\\w+)::(?<method>\\w+)\\)");

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "^```(?:yaml|csv) (?<file>\\S+)\n(?<text>.*?)^```", Pattern.DOTALL | Pattern.MULTILINE);

  static List<Fault> contentRules() {
    return ContentRules.catalogue().faults();
  }

  static List<Fault> cardRules() {
    return CardRules.catalogue().faults();
  }

  static List<Fault> cardFaults() {
    return CardRules.faults();
  }

  static List<Fault> rulesAndCardFaults() {
    return Stream.concat(contentRules().stream(), cardFaults().stream()).toList();
  }

  @Test
  void baseUnitHasNothingWrongWithIt() {
    CheckedEdit judged = CheckedEdit.after(CheckedEdit.BASE, "");
    assertThat(judged.problems()).as(judged.print()).isEmpty();
  }

  /** So every rule about cards is quiet on a card that is right. */
  @Test
  void cardsOfTheUntouchedUnitHaveNothingWrongWithThem() {
    assertThat(EditedUnit.untouched().problems()).isEmpty();
  }

  @Test
  void idsAreUnique() {
    assertThat(everyFault().map(Fault::id)).doesNotHaveDuplicates();
  }

  @Test
  void noRuleWasLost() {
    assertThat(contentRules()).hasSizeGreaterThanOrEqualTo(107);
    assertThat(cardRules()).hasSizeGreaterThanOrEqualTo(45);
  }

  /** So whoever knows the id finds the method, and nothing that is written stays out. */
  @Test
  void subjectsListEveryRuleAndNameItsMethodAfterItsId() throws IOException {
    for (Path folder : List.of(CONTENT_SUBJECTS, CARD_SUBJECTS)) {
      List<String> listed = new ArrayList<>();
      for (Path file : subjects(folder)) {
        String subject = Fixtures.name(file).replace(".java", "");
        for (MatchResult entry : ENTRY.matcher(Fixtures.text(file)).results().toList()) {
          assertThat(entry.group(2)).isEqualTo(subject);
          assertThat(entry.group(3)).isEqualTo(camelCase(entry.group(1)));
          listed.add(entry.group(1));
        }
      }
      assertThat(listed)
          .containsExactlyInAnyOrderElementsOf(
              (folder.equals(CARD_SUBJECTS) ? cardRules() : contentRules())
                  .stream().map(Fault::id).toList());
    }
  }

  /** More than that nobody takes in at a glance. */
  @Test
  void noFolderOfRulesHoldsMoreThanFortyClasses() throws IOException {
    for (Path folder : List.of(CONTENT_SUBJECTS, CARD_SUBJECTS)) {
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files).as(folder.toString()).hasSizeBetween(20, 40);
      }
    }
  }

  /** A class that lists rules. */
  private static List<Path> subjects(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> Fixtures.text(file).contains("static List<Rule<")).toList();
    }
  }

  private static String camelCase(String id) {
    return Pattern.compile("-([a-z0-9])")
        .matcher(id)
        .replaceAll(match -> match.group(1).toUpperCase(Locale.ROOT));
  }

  @ParameterizedTest
  @MethodSource("rulesAndCardFaults")
  void summaryIsOneLineWithoutFullStop(Fault fault) {
    assertThat(fault.summary())
        .matches("[a-zA-Z0-9].*[^.]")
        .hasSizeLessThanOrEqualTo(90)
        .doesNotContain("\n");
  }

  @ParameterizedTest
  @MethodSource("rulesAndCardFaults")
  void pageHasAllFourHeadings(Fault fault) {
    RulePage page = RulePage.of(fault).orElseThrow();
    assertThat(List.of(page.whatItChecks(), page.whyItMatters(), page.wrong(), page.right()))
        .allSatisfy(section -> assertThat(section).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("cardFaults")
  void pageAboutCardsNamesItsSourceAndHowItIsKnown(Fault fault) {
    assertThat(RulePage.of(fault).orElseThrow().whyItMatters())
        .containsPattern(
            "(?i)\\(.*(read|summarised|reproduced|quoted|from memory|judgement|no source|tried"
                + "|computed|guides).*\\)");
  }

  @Test
  void everyPageBelongsToARuleOrAFaultOfReading() throws IOException {
    List<String> known = everyFault().map(Fault::id).toList();
    try (Stream<Path> pages = Files.list(PAGES)) {
      assertThat(pages.map(page -> Fixtures.name(page).replace(".md", ""))).isSubsetOf(known);
    }
  }

  private static Stream<Fault> everyFault() {
    return Stream.of(
            contentRules().stream(),
            cardFaults().stream(),
            ReadingFaults.all().stream(),
            LedgerFaults.all().stream(),
            BookFaults.all().stream(),
            Stream.of(DatedAhead.FAULT),
            RecordFaults.all().stream())
        .flatMap(each -> each);
  }

  @ParameterizedTest
  @MethodSource("contentRules")
  void ruleHasFixturesThatFireAndFixturesThatAreQuiet(Fault fault) {
    holdsBothKinds(Fixtures.of(Fixtures.OF_CONTENT, fault.id()), fault.id());
  }

  /** What no edit of content brings onto a card is painted there by the test of its subject. */
  @ParameterizedTest
  @MethodSource("cardRules")
  void ruleAboutCardsHasFixturesOrFiresInTheTestOfItsSubject(Fault fault) throws IOException {
    List<Path> fixtures = Fixtures.of(Fixtures.OF_CARDS, fault.id());
    if (fixtures.isEmpty()) {
      try (Stream<Path> tests = Files.list(CARD_TESTS)) {
        assertThat(tests)
            .anyMatch(
                file ->
                    Fixtures.name(file).endsWith("RulesTest.java")
                        && Fixtures.text(file).contains("finds(\"" + fault.id() + "\","));
      }
    } else {
      holdsBothKinds(fixtures, fault.id());
    }
  }

  private static void holdsBothKinds(List<Path> fixtures, String id) {
    assertThat(fixtures).as("fixtures of " + id).anyMatch(Fixtures::fires);
    assertThat(fixtures).as("fixtures of " + id).anyMatch(file -> !Fixtures.fires(file));
    assertThat(fixtures)
        .allSatisfy(
            file -> {
              assertThat(Fixtures.name(file)).matches("(fires|quiet)-.*\\.edit");
              assertThat(Fixtures.expects(file).contains(id)).isEqualTo(Fixtures.fires(file));
            });
  }

  @Test
  void everyFixtureFolderBelongsToARule() {
    assertThat(Fixtures.ids(Fixtures.OF_CONTENT))
        .isSubsetOf(contentRules().stream().map(Fault::id).toList());
    assertThat(Fixtures.ids(Fixtures.OF_CARDS))
        .isNotEmpty()
        .isSubsetOf(cardRules().stream().map(Fault::id).toList());
  }

  /**
   * The right example of a page stands in the base unit as it is; put in its place, the wrong one
   * brings problems of this rule and of no other. What the base unit does not hold stands in the
   * fixtures: the right example in a quiet one, the wrong one in one that fires.
   */
  @ParameterizedTest
  @MethodSource("contentRules")
  void examplesOnThePageAreTrue(Fault fault) {
    RulePage page = RulePage.of(fault).orElseThrow();
    Matcher wrong = EXAMPLE.matcher(page.wrong());
    Matcher right = EXAMPLE.matcher(page.right());
    if (!wrong.find() || !right.find()) {
      return;
    }
    assertThat(wrong.group("file")).isEqualTo(right.group("file"));
    Path base = CheckedEdit.BASE.resolve(right.group("file"));
    if (!Files.exists(base) || !bare(Fixtures.text(base)).contains(bare(right.group("text")))) {
      assertThat(stands(bare(right.group("text")), Fixtures.OF_CONTENT, fault, false)).isTrue();
      assertThat(stands(bare(wrong.group("text")), Fixtures.OF_CONTENT, fault, true)).isTrue();
      return;
    }
    String patch =
        "=== "
            + wrong.group("file")
            + "\n"
            + marked("-", right.group("text"))
            + marked("+", wrong.group("text"));
    CheckedEdit judged = CheckedEdit.after(CheckedEdit.BASE, patch);
    assertThat(judged.problems().stream().map(Problem::fault).distinct())
        .as(judged.print())
        .containsExactly(fault);
  }

  private static String marked(String sign, String text) {
    return text.lines().map(line -> sign + line + "\n").collect(Collectors.joining());
  }

  /** Rules about words: what their pages show as wrong fires in a fixture, the right is quiet. */
  static List<Fault> cardRulesWithFixtures() {
    return cardRules().stream()
        .filter(fault -> !Fixtures.of(Fixtures.OF_CARDS, fault.id()).isEmpty())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cardRulesWithFixtures")
  void examplesOfThePageStandInFixtures(Fault fault) {
    RulePage page = RulePage.of(fault).orElseThrow();
    assertThat(examples(page.wrong()))
        .isNotEmpty()
        .allMatch(each -> stands(each, Fixtures.OF_CARDS, fault, true));
    assertThat(examples(page.right()))
        .isNotEmpty()
        .allMatch(each -> stands(each, Fixtures.OF_CARDS, fault, false));
  }

  private static boolean stands(String example, Path root, Fault fault, boolean fires) {
    return Fixtures.of(root, fault.id()).stream()
        .filter(file -> Fixtures.fires(file) == fires)
        .anyMatch(file -> shown(file).contains(example));
  }

  /** What a fixture leaves in the content: lines that stay or come. */
  private static String shown(Path fixture) {
    return bare(
        Fixtures.text(fixture)
            .lines()
            .filter(line -> line.startsWith("+") || line.startsWith(" "))
            .map(line -> line.substring(1).replaceFirst("\\s*# expect: .*", ""))
            .collect(Collectors.joining("\n")));
  }

  /** Lines without their indentation. */
  private static String bare(String text) {
    return text.lines().map(String::strip).collect(Collectors.joining("\n"));
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
        Pattern.compile("`([^`]+)`")
            .matcher(line)
            .results()
            .forEach(marked -> examples.add(marked.group(1)));
      }
    }
    return examples;
  }

  /** The table of the rules by number holds rules that exist; what has no number may stay out. */
  @Test
  void tableByNumberHoldsRulesThatExist() {
    String guide = Fixtures.text(Path.of("DEVELOPERS.md"));
    String table =
        guide.substring(guide.indexOf("## Card rules by number"), guide.indexOf("## Tests"));
    List<String> known = everyFault().map(Fault::id).toList();
    List<String> ids =
        table
            .lines()
            .filter(line -> line.startsWith("| C"))
            .flatMap(line -> Pattern.compile("`([a-z-]+)`").matcher(line).results())
            .map(match -> match.group(1))
            .toList();
    assertThat(ids).hasSizeGreaterThan(40).isSubsetOf(known);
  }
}
