package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class TextContrastTooLowTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new TextContrastTooLow().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void greyWords_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.words(20, 230, "grey", 14.6, new Color(0x76, 0x76, 0x76))));
    assertThat(new TextContrastTooLow().problems(unit.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void inkOnADarkGround_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.fill(15, 222, 40, 12, Color.DARK_GRAY),
                    Overpaint.words(20, 230, "dark", 14.6))));
    assertThat(new TextContrastTooLow().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
