package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class LinesTooCloseTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new LinesTooClose().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void linesFifteenPointsApart_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.words(20, 225, "one line", 14.6),
                    Overpaint.words(20, 225 + 15 * 25.4 / 72, "another", 14.6))));
    assertThat(new LinesTooClose().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
