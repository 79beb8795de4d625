package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.render.card.CardRenderer;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Phrase;

/** Words that got lost between the plan of a card and its PDF. */
final class PrintingRulesTest {

  private static final String SETTINGS = "room-1-eq-1-settings";
  private static final String SET_UP = "room-1-eq-1-set-up";

  private final EditedUnit unit = EditedUnit.untouched();

  @ParameterizedTest
  @ValueSource(strings = {SETTINGS, SET_UP})
  void untouchedCard_isQuiet(String card) {
    assertThat(finds("phrase-not-printed", unit.card(card))).isEmpty();
  }

  @Test
  void blockThatWasNeverPainted_isFoundPhraseByPhrase() {
    CardPlan whole = unit.plan(SET_UP);
    Block.Drilled lost = whole.blocks(Block.Drilled.class).get(0);
    Inspection seen = printedWithout(whole, block -> block.equals(lost));
    assertThat(finds("phrase-not-printed", unit.card(SET_UP, seen)))
        .hasSizeGreaterThan(2)
        .anySatisfy(
            problem -> {
              assertThat(problem.message()).startsWith("'" + lost.title().words() + "'");
              assertThat(problem.at()).isEqualTo(lost.title().at());
            });
  }

  @Test
  void wordsThatStandOnTheCardOnceAndShouldTwice_areFound() {
    CardPlan whole = unit.plan(SET_UP);
    Phrase once = whole.blocks(Block.SetUp.class).get(0).steps().get(0).action();
    CardPlan twice = with(whole, new Block.Marks(List.of(once)));
    InspectedCard card =
        new InspectedCard(unit.publication(), twice, Inspection.of(unit.file(SET_UP)), List.of());
    assertThat(finds("phrase-not-printed", card))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .startsWith("'" + InspectedCard.spaced(once.words()) + "' belongs on"));
  }

  @Test
  void wordsOfADrawingThatWasNeverPainted_areFound() {
    CardPlan whole = unit.plan(SETTINGS);
    Inspection seen = printedWithout(whole, Block.Maps.class::isInstance);
    assertThat(finds("phrase-not-printed", unit.card(SETTINGS, seen))).isNotEmpty();
  }

  private Inspection printedWithout(CardPlan whole, Predicate<Block> lost) {
    List<Block> rest = whole.blocks().stream().filter(lost.negate()).toList();
    return Inspection.of(
        CardRenderer.render(unit.publication(), List.of(with(whole, rest))).printed().get(0));
  }

  private static CardPlan with(CardPlan whole, Block more) {
    return with(whole, Stream.concat(whole.blocks().stream(), Stream.of(more)).toList());
  }

  private static CardPlan with(CardPlan whole, List<Block> blocks) {
    return new CardPlan(
        whole.room(),
        whole.asset(),
        whole.face(),
        whole.part(),
        whole.code(),
        whole.address(),
        whole.fingerprint(),
        blocks);
  }
}
