package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.inspect.CardRules;
import stackside.inspect.Inspection;
import stackside.inspect.PrintedWords;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.Shape;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;
import stackside.render.plan.Phrase;
import stackside.source.Severity;

/**
 * Every card of the demonstration is free of errors, and its smallest letters are above their
 * minimum.
 */
final class CardLegibilityTest {

  private static final double FOOTER = 10;

  /** 16 minutes of arc at 700 mm and at 1,500 mm. (ISO 9241-303 as quoted; computed.) */
  private static final double NEAR = 3.258;

  private static final double FAR = 6.981;

  /** 0.10 inch. (Degani 1992, 7, as summarised.) */
  private static final double SMALL = 2.54;

  static List<OutputFile> cards() {
    return Demonstration.cards();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void smallestLettersAreOverTheirFloors(OutputFile card) {
    Inspection seen = Inspection.of(card);
    assertThat(capital(seen)).as(line(card)).isGreaterThanOrEqualTo(NEAR);
    assertThat(small(seen)).as(line(card)).isGreaterThanOrEqualTo(SMALL);
  }

  @Test
  void noCardHasAnError() {
    Publication publication = Demonstration.publication();
    RenderedCards rendered = CardRenderer.render(publication);
    assertThat(rendered.problems()).as("why cards are not printed as planned").isEmpty();
    assertThat(CardRules.judge(publication, Demonstration.plans(), rendered.printed()))
        .filteredOn(problem -> problem.severity() == Severity.ERROR)
        .isEmpty();
    assertThat(rendered.printed()).hasSameSizeAs(Demonstration.plans());
  }

  /** Each tier, far, near and footer: its smallest letter and its minimum. */
  @Test
  void everyTierOfEveryCardIsOverItsFloor_asTheTableSays() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(
        "| card | near capitals, mm | floor | small letters, mm | floor | far capitals, mm | floor |");
    lines.add("|---|---|---|---|---|---|---|");
    for (OutputFile card : cards()) {
      Inspection seen = Inspection.of(card);
      CardPlan plan =
          Demonstration.plans().stream()
              .filter(each -> each.path().equals(card.path()))
              .findFirst()
              .orElseThrow();
      double far = far(plan, seen);
      assertThat(far).as(card.path()).isGreaterThanOrEqualTo(FAR);
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f |",
              plan.name(),
              capital(seen),
              NEAR,
              small(seen),
              SMALL,
              far,
              FAR));
    }
    Files.write(Path.of("target", "card-letters.md"), lines);
    assertThat(lines).hasSize(cards().size() + 2);
  }

  /** The smallest capitals of make-safe lines, asset number, drill titles, telephone numbers. */
  private static double far(CardPlan plan, Inspection seen) {
    Stream<Phrase> phrases =
        plan.blocks().stream()
            .flatMap(
                block -> {
                  if (block instanceof Block.Identity identity) {
                    return Stream.of(identity.asset());
                  }
                  if (block instanceof Block.MakeSafe makeSafe) {
                    return makeSafe.phrases();
                  }
                  if (block instanceof Block.Drilled drill) {
                    return Stream.of(drill.title());
                  }
                  return block instanceof Block.Contacts contacts
                      ? contacts.calls().stream().map(Block.Contacts.Call::phone)
                      : Stream.empty();
                });
    return phrases.mapToDouble(phrase -> highest(phrase, seen)).min().orElseThrow();
  }

  /** A number also ends each drill in the near tier; the far occurrence is the higher one. */
  private static double highest(Phrase phrase, Inspection seen) {
    String words = phrase.words().replace('\u00a0', ' ');
    return seen.words().stream()
        .filter(each -> each.text().contains(words))
        .mapToDouble(seen::capital)
        .max()
        .orElse(0);
  }

  @Test
  void setUpFaceNamesTheSideThatItMeans() {
    Demonstration.plans().stream()
        .filter(plan -> plan.face() == Face.SET_UP)
        .flatMap(
            plan ->
                plan.blocks().stream()
                    .filter(b -> b instanceof Block.SetUp || b instanceof Block.Drilled)
                    .flatMap(Block::phrases))
        .forEach(phrase -> assertThat(phrase.words()).doesNotContain("the card"));
  }

  @Test
  void nothingOnAPanelLeavesItsFrame() {
    for (CardPlan plan : Demonstration.plans()) {
      for (Block.Maps maps : plan.blocks(Block.Maps.class)) {
        assertThat(maps.sockets().shapes())
            .filteredOn(Shape.Rect.class::isInstance)
            .map(Shape.Rect.class::cast)
            .isNotEmpty()
            .allMatch(rect -> rect.x() >= 0 && rect.x() + rect.width() <= maps.sockets().width());
      }
    }
  }

  private static List<PrintedWords> body(Inspection seen) {
    return seen.words().stream().filter(words -> words.points() > FOOTER + 0.01).toList();
  }

  private static double capital(Inspection seen) {
    return body(seen).stream().mapToDouble(seen::capital).min().orElse(0);
  }

  private static double small(Inspection seen) {
    return body(seen).stream().mapToDouble(seen::small).min().orElse(0);
  }

  private static String line(OutputFile card) {
    Inspection seen = Inspection.of(card);
    return String.format(
        Locale.ROOT,
        "%s: capitals %.2f mm, small %.2f mm",
        card.path(),
        capital(seen),
        small(seen));
  }
}
