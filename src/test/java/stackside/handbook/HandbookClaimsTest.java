package stackside.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.check.ContentRules;
import stackside.content.Chapters;
import stackside.derive.Analysis;
import stackside.derive.handbook.ChapterPart;
import stackside.derive.handbook.Claim;
import stackside.derive.handbook.Grounds;
import stackside.model.Citation;
import stackside.model.HandbookPage;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * What the chapters of the program rest on, how they are built and how they read. The table of all
 * claims is written to {@code target/handbook-claims.csv}, the measures to {@code
 * target/handbook-measures.txt}.
 */
final class HandbookClaimsTest {
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?:])\\s+(?=[\\p{Lu}\"“])");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\d][\\p{L}\\d'’.-]*");
  private static final Pattern MARK =
      Pattern.compile(
          "\\[[\\d, ]+]|(?i:common practice, no source|the unit's own|not known)\\.?\\s*$");

  private static List<HandbookPage> chapters() {
    return Units.demonstration().handbook().stream().filter(HandbookPage::isChapter).toList();
  }

  private static Optional<Citation> citation(ThingId id, HandbookPage page, Unit unit) {
    return unit.find(id)
        .map(Citation.class::cast)
        .or(() -> page.borrowed().stream().filter(each -> each.id().equals(id)).findFirst());
  }

  @Test
  void theDemonstrationTakesOverEveryChapter() {
    assertThat(chapters())
        .extracting(page -> page.id().slug())
        .containsExactlyElementsOf(Chapters.names());
  }

  /** Claim, page, source, read or recalled, and who says otherwise: no cell is empty. */
  @Test
  void theTableOfClaimsHasNoEmptyCell() throws IOException {
    Unit unit = Units.demonstration();
    List<String> rows = new ArrayList<>();
    rows.add("page,note,claim,source,basis,otherwise");
    for (HandbookPage page : unit.handbook()) {
      for (Claim claim : Grounds.of(page).claims()) {
        assertThat(claim.isComplete()).as(page.id() + " " + claim.number()).isTrue();
        for (ThingId source : claim.sources()) {
          Citation found = citation(source, page, unit).orElseThrow();
          List<String> cells =
              List.of(
                  page.id().slug(),
                  String.valueOf(claim.number()),
                  claim.words().plain(),
                  found.title(),
                  found.basis().value().word(),
                  claim.otherwise().plain());
          assertThat(cells).noneMatch(String::isBlank);
          rows.add(
              cells.stream()
                  .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                  .collect(Collectors.joining(",")));
        }
      }
    }
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target/handbook-claims.csv"), rows, StandardCharsets.UTF_8);
    System.out.println(rows.size() - 1 + " rows in the table of claims");
    assertThat(rows).hasSizeGreaterThan(120);
  }

  @Test
  void theRulesOfTheBuildFindNothingInTheDemonstration() {
    Analysis analysis = Analysis.of(Units.demonstration());
    assertThat(ContentRules.judge(analysis, LocalDate.of(2026, 11, 25)))
        .filteredOn(
            problem ->
                Set.of("paragraph-without-source", "claim-incomplete")
                    .contains(problem.fault().id()))
        .isEmpty();
  }

  /** The number that stands first in the text is the first row of the table, and so on. */
  @Test
  void claimsAreNumberedInOrder() {
    for (HandbookPage page : chapters()) {
      List<Claim> claims = Grounds.of(page).claims();
      assertThat(claims)
          .as(page.id().slug())
          .extracting(Claim::number)
          .containsExactlyElementsOf(IntStream.rangeClosed(1, claims.size()).boxed().toList());
    }
  }

  /** A publication that the unit describes too must not be known otherwise there. */
  @Test
  void everySourceIsDescribedInOneWay() {
    Map<ThingId, Citation> program = new TreeMap<>();
    Set<ThingId> cited = new TreeSet<>();
    Unit bare = Units.read("whole");
    Unit demonstration = Units.demonstration();
    for (HandbookPage page : demonstration.handbook()) {
      page.borrowed().forEach(each -> program.put(each.id(), each));
      Grounds.of(page).claims().forEach(claim -> cited.addAll(claim.sources()));
    }
    String file = resource("/stackside/chapters/sources.yaml");
    for (Citation own : demonstration.citations()) {
      if (cited.contains(own.id())) {
        String line = "- {id: " + own.id().slug() + ", ";
        assertThat(line(file, line)).isEqualTo(line(resource("content/sources.yaml"), line));
      }
    }
    Set<String> described =
        file.lines()
            .filter(each -> each.startsWith("- {id: "))
            .map(each -> each.replaceFirst("^- \\{id: ([^,]+),.*", "$1"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(described)
        .as("sources that no chapter cites")
        .allMatch(id -> cited.contains(ThingId.parse("source:" + id).orElseThrow()));
    assertThat(bare.handbook()).anyMatch(HandbookPage::isChapter);
  }

  private static String line(String file, String start) {
    return file.lines().filter(each -> each.startsWith(start)).findFirst().orElseThrow();
  }

  private static String resource(String name) {
    Path path = Path.of(name.startsWith("/") ? "src/main/resources" + name : name);
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new AssertionError(path.toString(), e);
    }
  }

  /** Remember, why, in your room, test yourself, sources: in this order, and no workshop marks. */
  @Test
  void everyChapterHasItsParts() {
    for (HandbookPage page : chapters()) {
      String name = page.id().slug();
      List<Prose.Block> blocks = page.text().blocks();
      List<String> heads =
          blocks.stream()
              .filter(Prose.Heading.class::isInstance)
              .map(block -> plain(List.of(block), page))
              .toList();
      List<ChapterPart> parts =
          blocks.stream()
              .filter(Prose.Heading.class::isInstance)
              .flatMap(head -> ChapterPart.begunBy((Prose.Heading) head).stream())
              .toList();
      assertThat(parts).as(name).containsExactly(ChapterPart.values());
      assertThat(heads.size()).as(name + " has something between").isGreaterThan(5);
      assertThat(blocks.get(1)).as(name).isInstanceOf(Prose.Items.class);
      assertThat(((Prose.Items) blocks.get(1)).items()).as(name).hasSizeBetween(1, 3);
      assertThat(figuresOfTheUnit(blocks)).as(name + " shows what the unit has").isPositive();
      assertThat(page.text().plain())
          .as(name)
          .doesNotContainPattern(
              "\\((read|recalled)|; read\\b|, read\\)|\\bfrom memory\\b|second-hand");
      assertThat(Grounds.of(page).claims()).as(name).isNotEmpty();
    }
  }

  private static long figuresOfTheUnit(List<Prose.Block> blocks) {
    return blocks.stream()
        .filter(Prose.Figure.class::isInstance)
        .filter(figure -> ((Prose.Figure) figure).name().endsWith("-here"))
        .count();
  }

  private static String plain(List<Prose.Block> blocks, HandbookPage page) {
    return new Prose(page.at(), blocks).plain().replaceAll("\\s+", " ").strip();
  }

  /** Median at most 16 words a sentence, 95 percent below 28. */
  @Test
  void sentencesAreShort() throws IOException {
    List<String> measures = new ArrayList<>();
    List<Integer> all = new ArrayList<>();
    int words = 0;
    for (HandbookPage page : chapters()) {
      List<Integer> lengths = lengths(page);
      all.addAll(lengths);
      int count = lengths.stream().mapToInt(each -> each).sum();
      words += count;
      assertThat(percentile(lengths, 50)).as("median on " + page.id()).isLessThanOrEqualTo(16);
      assertThat(percentile(lengths, 95)).as("95 percent on " + page.id()).isLessThan(28);
      measures.add(
          String.format(
              Locale.ROOT,
              "%s: %d words, %d sentences, median %d, 95 percent %d, %d claims",
              page.id().slug(),
              count,
              lengths.size(),
              percentile(lengths, 50),
              percentile(lengths, 95),
              Grounds.of(page).claims().size()));
    }
    measures.add(
        String.format(
            Locale.ROOT,
            "all: %d words, %d sentences, median %d, 95 percent %d",
            words,
            all.size(),
            percentile(all, 50),
            percentile(all, 95)));
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target/handbook-measures.txt"), measures, StandardCharsets.UTF_8);
    measures.forEach(System.out::println);
  }

  /** Words in each sentence of the running text; cells, headings, notes and marks do not count. */
  private static List<Integer> lengths(HandbookPage page) {
    return Grounds.of(page).body().stream()
        .flatMap(HandbookClaimsTest::runningText)
        .map(block -> plain(List.of(block), page))
        .flatMap(text -> Stream.of(SENTENCE.split(MARK.matcher(text).replaceAll(""))))
        .map(sentence -> (int) WORD.matcher(sentence).results().count())
        .filter(count -> count > 1)
        .toList();
  }

  private static Stream<Prose.Block> runningText(Prose.Block block) {
    if (block instanceof Prose.Items items) {
      return items.items().stream().flatMap(List::stream).flatMap(HandbookClaimsTest::runningText);
    }
    return block instanceof Prose.Paragraph ? Stream.of(block) : Stream.empty();
  }

  private static int percentile(List<Integer> numbers, int percent) {
    List<Integer> sorted = numbers.stream().sorted().toList();
    return sorted.get(Math.min(sorted.size() - 1, sorted.size() * percent / 100));
  }
}
