package stackside.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.Units;
import stackside.model.HandbookPage;
import stackside.model.Kind;
import stackside.model.Prose;

/**
 * Every claim of the handbook bears its source or its mark, or speaks of the unit's own things, or
 * is called a rule of its own. The whole list is written to {@code target/handbook-claims.txt}. The
 * words are counted for readability too.
 */
final class HandbookClaimsTest {
  private static final Pattern MARK =
      Pattern.compile(
          "([(,;] ?(both )?|abstract )read\\b(?! aloud)"
              + "|\\b(from memory|no source|calculated|computed|invented|the unit's own rule)\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?:])\\s+(?=[\\p{Lu}\"“])");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\d][\\p{L}\\d'’-]*");
  private static final Pattern SYLLABLE = Pattern.compile("[aeiouy]+");

  private static final List<String> TOPICS =
      List.of(
          "argon",
          "bipolar",
          "bowel-gas",
          "heat-and-tissue",
          "implanted-devices",
          "lesion-by-lesion",
          "modes",
          "neutral-electrode",
          "output-checks",
          "site-and-wall",
          "smoke-and-staff",
          "waveforms",
          "what-current-does",
          "when-it-fails");

  /** How a claim is backed. */
  private enum Backed {
    BY_ITS_OWN_MARK,
    BY_A_MARK_BELOW_IT,
    BY_THE_UNITS_OWN_THINGS,
    NOT
  }

  private record Claim(String page, String text, Backed backed) {}

  private static List<HandbookPage> pages() {
    return Units.demonstration().handbook();
  }

  private static List<Claim> claims() {
    List<Claim> claims = new ArrayList<>();
    for (HandbookPage page : pages()) {
      List<Prose.Block> section = new ArrayList<>();
      for (Prose.Block block : page.text().blocks()) {
        if (block instanceof Prose.Heading) {
          claims(page, section, claims);
          section.clear();
        } else if (!(block instanceof Prose.Figure)) {
          section.add(block);
        }
      }
      claims(page, section, claims);
    }
    return claims;
  }

  /** The claims of one section: a mark below backs what stands above it, up to the heading. */
  private static void claims(HandbookPage page, List<Prose.Block> section, List<Claim> claims) {
    for (int i = 0; i < section.size(); i++) {
      boolean below =
          section.subList(i + 1, section.size()).stream()
              .anyMatch(block -> MARK.matcher(plain(List.of(block), page)).find());
      for (List<Prose.Block> one : single(section.get(i))) {
        String text = plain(one, page);
        Backed backed =
            MARK.matcher(text).find()
                ? Backed.BY_ITS_OWN_MARK
                : below
                    ? Backed.BY_A_MARK_BELOW_IT
                    : speaksOfTheUnit(one, page) ? Backed.BY_THE_UNITS_OWN_THINGS : Backed.NOT;
        claims.add(new Claim(page.id().slug(), text, backed));
      }
    }
  }

  private static List<List<Prose.Block>> single(Prose.Block block) {
    return block instanceof Prose.Items items ? items.items() : List.of(List.of(block));
  }

  private static String plain(List<Prose.Block> blocks, HandbookPage page) {
    return new Prose(page.at(), blocks).plain().replaceAll("\\s+", " ").strip();
  }

  private static boolean speaksOfTheUnit(List<Prose.Block> blocks, HandbookPage page) {
    return new Prose(page.at(), blocks)
        .links().stream().anyMatch(link -> link.target().kind() != Kind.CITATION);
  }

  @Test
  void everyClaimBearsItsSourceOrItsMark() throws IOException {
    List<Claim> claims = claims();
    Map<Backed, Integer> counts = new TreeMap<>();
    claims.forEach(claim -> counts.merge(claim.backed(), 1, Integer::sum));
    Files.createDirectories(Path.of("target"));
    Files.write(
        Path.of("target/handbook-claims.txt"),
        claims.stream()
            .map(claim -> claim.page() + " | " + claim.backed() + " | " + claim.text())
            .toList(),
        StandardCharsets.UTF_8);
    System.out.println(claims.size() + " claims of the handbook: " + counts);

    assertThat(claims)
        .filteredOn(claim -> claim.backed() == Backed.NOT)
        .as("claims without a mark")
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Hotter by 4.4 °C in a test (Tan and Hinberg 1988, read). | true",
        "Both articles; both read. | true",
        "Skin stays cool (title and abstract read). | true",
        "It is common practice, no source. | true",
        "It burns at 50 °C. Read both aloud. | false",
        "So trace, read aloud, and set 60 W. | false"
      })
  void onlyAMarkIsAMark(String claim, boolean marked) {
    assertThat(MARK.matcher(claim).find()).isEqualTo(marked);
  }

  @Test
  void everyTopicHasItsPage() {
    assertThat(pages()).extracting(page -> page.id().slug()).containsAll(TOPICS);
  }

  @Test
  void sentencesAreShortAndPlain() {
    int sentences = 0;
    int words = 0;
    int syllables = 0;
    List<String> tooLong = new ArrayList<>();
    for (HandbookPage page : pages()) {
      int pageSentences = 0;
      int pageWords = 0;
      for (String sentence : sentences(page)) {
        List<String> found = WORD.matcher(sentence).results().map(m -> m.group()).toList();
        if (found.size() < 2) {
          continue;
        }
        pageSentences++;
        pageWords += found.size();
        syllables += found.stream().mapToInt(HandbookClaimsTest::syllables).sum();
        if (found.size() > 30) {
          tooLong.add(page.id().slug() + ": " + sentence);
        }
      }
      assertThat((double) pageWords / pageSentences)
          .as("words a sentence on " + page.id().slug())
          .isLessThan(14);
      sentences += pageSentences;
      words += pageWords;
    }
    double length = (double) words / sentences;
    // Flesch 1948, from memory: 206.835 - 1.015 words a sentence - 84.6 syllables a word.
    double ease = 206.835 - 1.015 * length - 84.6 * syllables / words;
    System.out.printf(
        java.util.Locale.ROOT,
        "handbook: %d words, %d sentences, %.1f words a sentence, reading ease %.0f%n",
        words,
        sentences,
        length,
        ease);
    assertThat(tooLong).isEmpty();
    assertThat(length).isLessThan(12);
    assertThat(ease).isGreaterThan(60);
  }

  /** Prose only; a cell of a table is no sentence. */
  private static List<String> sentences(HandbookPage page) {
    return page.text().blocks().stream()
        .filter(block -> block instanceof Prose.Paragraph || block instanceof Prose.Items)
        .flatMap(block -> single(block).stream())
        .flatMap(one -> Stream.of(SENTENCE.split(plain(one, page))))
        .toList();
  }

  /** Groups of vowels, without a silent e at the end; never none. */
  private static int syllables(String word) {
    String lower = word.toLowerCase(java.util.Locale.ROOT);
    long groups = SYLLABLE.matcher(lower).results().count();
    return (int) Math.max(1, lower.matches(".*[^aeiouyl]e") ? groups - 1 : groups);
  }
}
