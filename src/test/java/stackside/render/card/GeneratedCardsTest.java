package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import stackside.Units;
import stackside.derive.Analysis;
import stackside.generate.GeneratedUnit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.source.Problem;

/**
 * Every card of a randomly generated unit is a single page in which qpdf and veraPDF find no fault.
 * A card that does not fit causes a named error, and its page says so.
 */
final class GeneratedCardsTest {

  /** How many times as large as the demonstration, and the seed. */
  private record Size(int times, long seed) {}

  private static final List<Size> UNITS =
      List.of(new Size(1, 1), new Size(1, 2), new Size(2, 4), new Size(11, 6));

  /** How many cards of one unit the normal run looks at. */
  private static final int FEW = 6;

  @TempDir Path folder;

  @BeforeAll
  static void prepare() {
    Conformance.prepare();
  }

  @Test
  void aFewCardsAreOneValidPageEach() throws Exception {
    Path content = folder.resolve("small");
    GeneratedUnit.of(1, 3).write(content);
    Publication publication = publication(content);
    List<CardPlan> plans = CardPlanner.plans(publication);
    RenderedCards cards = CardRenderer.render(publication, plans);
    assertThat(cards.files()).hasSize(plans.size()).hasSizeGreaterThan(FEW);
    for (OutputFile card : cards.files().subList(0, FEW)) {
      isOneValidPage(card);
    }
    everyRefusalIsNamed(cards);
  }

  @Test
  @Tag("thorough")
  void everyCardIsOneValidPage() throws Exception {
    int valid = 0;
    int refused = 0;
    for (Size size : UNITS) {
      GeneratedUnit unit = GeneratedUnit.of(size.times(), size.seed());
      Path content = folder.resolve(size.times() + "-" + size.seed());
      unit.write(content);
      Publication publication = publication(content);
      List<CardPlan> plans = CardPlanner.plans(publication);
      RenderedCards cards = CardRenderer.render(publication, plans);
      assertThat(cards.files()).hasSize(plans.size()).hasSizeGreaterThan(12 * size.times());
      for (OutputFile card : cards.files()) {
        isOneValidPage(card);
        valid++;
      }
      refused += cards.files().size() - cards.printed().size();
      everyRefusalIsNamed(cards);
    }
    System.out.printf(
        "%d cards of %d units valid, of which %d say that they do not fit%n",
        valid, UNITS.size(), refused);
    assertThat(refused).isLessThan(valid / 10);
  }

  @Test
  void cardThatDoesNotFit_isANamedError() throws Exception {
    SortedMap<String, String> files = new TreeMap<>(GeneratedUnit.of(1, 1).files());
    String words = "Hold the snare as it is and call out what you see on the front panel. ";
    files.computeIfPresent(
        "profiles/cordgrass.yaml",
        (name, text) ->
            text.replaceAll("(?m)^(    technique|    caution): .*$", "$1: " + words.repeat(6)));
    Path content = folder.resolve("long");
    new GeneratedUnit(files).write(content);
    Publication publication = publication(content);
    RenderedCards cards = CardRenderer.render(publication);
    assertThat(cards.printed()).hasSizeLessThan(cards.files().size());
    everyRefusalIsNamed(cards);
    assertThat(cards.problems())
        .extracting(each -> each.fault().id())
        .contains("card-overflows-page");
    Set<String> printed =
        cards.printed().stream().map(OutputFile::path).collect(Collectors.toSet());
    OutputFile refused =
        cards.files().stream()
            .filter(card -> !printed.contains(card.path()))
            .findFirst()
            .orElseThrow();
    isOneValidPage(refused);
  }

  private static Publication publication(Path content) {
    return new Publication(
        Analysis.of(Units.whole(content)),
        List.of(),
        List.of(),
        Marking.DRAFT,
        LocalDate.of(2026, 11, 25));
  }

  private static void everyRefusalIsNamed(RenderedCards cards) {
    int refused = cards.files().size() - cards.printed().size();
    assertThat(cards.problems().isEmpty()).isEqualTo(refused == 0);
    for (Problem problem : cards.problems()) {
      assertThat(problem.message()).isNotBlank();
      assertThat(problem.help()).as(problem.message()).isPresent();
    }
  }

  private void isOneValidPage(OutputFile card) throws Exception {
    try (PDDocument document = Loader.loadPDF(card.bytes())) {
      assertThat(document.getNumberOfPages()).as(card.path()).isEqualTo(1);
    }
    Conformance.conforms(card, PDFAFlavour.PDFA_2_B);
    Conformance.conforms(card, PDFAFlavour.PDFUA_1);
    Path file = folder.resolve("card.pdf");
    Files.write(file, card.bytes());
    assertThat(Tool.named("qpdf").run(folder, "--check", "card.pdf"))
        .as(card.path())
        .contains("No syntax or stream encoding errors found");
  }
}
