package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class WordsNearEdgeTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new WordsNearEdge().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void wordsEightMillimetresFromTheEdge_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.words(8, 230, "near", 14.6)));
    assertThat(new WordsNearEdge().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
