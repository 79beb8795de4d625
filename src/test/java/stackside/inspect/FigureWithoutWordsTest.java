package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class FigureWithoutWordsTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new FigureWithoutWords().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void drawingWithoutWords_isFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).with("Figure", "").inspection();
    assertThat(new FigureWithoutWords().problems(unit.card(CARD, seen))).hasSize(1);
  }

  @Test
  void headerCellWithoutScope_isFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).with("TH", "Program").inspection();
    assertThat(new FigureWithoutWords().problems(unit.card(CARD, seen))).hasSize(1);
  }
}
