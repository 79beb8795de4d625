package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class FillsAlikeInGreyTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new FillsAlikeInGrey().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void safetyRedBesideSafetyBlue_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.fill(20, 225, 10, 5, new Color(0x9b, 0x24, 0x23)),
                    Overpaint.fill(40, 225, 10, 5, new Color(0x00, 0x53, 0x87)))));
    assertThat(new FillsAlikeInGrey().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
