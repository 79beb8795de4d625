package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.inspect.CardRules;
import stackside.inspect.Inspection;
import stackside.inspect.PrintedWords;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.source.Severity;

/** Every card of the demonstration without an error, and its smallest letters over their floors. */
final class CardLegibilityTest {

  private static final double FOOTER = 10;

  static List<OutputFile> cards() {
    return Demonstration.cards();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void smallestLettersAreOverTheirFloors(OutputFile card) {
    Inspection seen = Inspection.of(card);
    assertThat(capital(seen)).as(line(card)).isGreaterThanOrEqualTo(3.258);
    assertThat(small(seen)).as(line(card)).isGreaterThanOrEqualTo(2.54);
  }

  @Test
  void noCardHasAnError() {
    Publication publication = Demonstration.publication();
    assertThat(CardRules.judge(publication, Demonstration.plans(), Demonstration.cards()))
        .filteredOn(problem -> problem.severity() == Severity.ERROR)
        .isEmpty();
    assertThat(Demonstration.cards()).hasSameSizeAs(Demonstration.plans());
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
