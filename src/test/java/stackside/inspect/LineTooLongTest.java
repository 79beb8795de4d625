package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class LineTooLongTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new LineTooLong().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void seventyOneLetters_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(unit.file(CARD), Overpaint.words(12, 230, "n".repeat(71), 12)));
    assertThat(new LineTooLong().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
