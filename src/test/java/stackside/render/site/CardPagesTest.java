package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.Phrase;

/** The page of a card says the same as the card, in the same order. */
final class CardPagesTest {

  static List<CardPlan> plans() {
    return CardPlanner.plans(DemonstrationSite.publication(Units.demonstration(), Marking.DRAFT));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void pageHasTheWordsOfTheCardInTheirOrder(CardPlan plan) {
    String text = text("c/" + plan.code() + "/index.html");
    int from = 0;
    for (String words : words(plan).toList()) {
      int at = text.indexOf(words, from);
      assertThat(at)
          .as("'%s' after '%s'", words, text.substring(Math.max(0, from - 40), from))
          .isNotNegative();
      from = at + words.length();
    }
  }

  /** All phrases except the heads of columns, which a page uses as labels. */
  private static Stream<String> words(CardPlan plan) {
    return plan.blocks().stream()
        .flatMap(
            block ->
                block instanceof Block.Answers answers
                    ? answers.rows().stream().flatMap(row -> row.phrases())
                    : block.phrases())
        .map(Phrase::words)
        .map(CardPagesTest::spaced);
  }

  private static String text(String path) {
    OutputFile page =
        DemonstrationSite.files().stream()
            .filter(file -> file.path().equals(path))
            .findFirst()
            .orElseThrow();
    return spaced(
        Jsoup.parse(new String(page.bytes(), StandardCharsets.UTF_8)).selectFirst("main").text());
  }

  private static String spaced(String words) {
    return words.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }
}
