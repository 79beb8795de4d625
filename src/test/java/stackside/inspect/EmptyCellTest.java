package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class EmptyCellTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new EmptyCell().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void cellWithoutWords_isFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).with("TD", "").inspection();
    assertThat(new EmptyCell().problems(unit.card(CARD, seen))).hasSize(1);
  }
}
