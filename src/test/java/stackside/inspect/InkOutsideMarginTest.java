package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class InkOutsideMarginTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new InkOutsideMargin().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void barAtTheEdge_isFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.fill(2, 100, 10, 2, Color.BLACK)));
    assertThat(new InkOutsideMargin().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
