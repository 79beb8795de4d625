package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class ColourWithoutWordTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new ColourWithoutWord().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void lonelyBlue_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD), Overpaint.fill(20, 225, 10, 5, new Color(0x1f, 0x6f, 0xc4))));
    assertThat(new ColourWithoutWord().problems(unit.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void colourWithoutWhatItDoes_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.fill(20, 225, 10, 5, new Color(0x1f, 0x6f, 0xc4)),
                    Overpaint.words(20, 236, "blue", 14.6))));
    assertThat(new ColourWithoutWord().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
