package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class SwatchWithoutOutlineTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new SwatchWithoutOutline().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void bareYellow_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD), Overpaint.fill(20, 225, 10, 5, new Color(0xff, 0xd4, 0x00))));
    assertThat(new SwatchWithoutOutline().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
