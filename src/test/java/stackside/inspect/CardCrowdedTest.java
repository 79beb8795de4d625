package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class CardCrowdedTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new CardCrowded().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void wordsAllOverThePage_areFound() {
    Overpaint.Fault fault = Overpaint.words(15, 60, "X".repeat(30), 40);
    for (int line = 1; line < 40; line++) {
      fault = Overpaint.both(fault, Overpaint.words(15, 60 + line * 5, "X".repeat(30), 40));
    }
    Inspection seen = Inspection.of(Overpaint.with(unit.file(CARD), fault));
    assertThat(new CardCrowded().problems(unit.card(CARD, seen))).hasSize(1);
  }
}
