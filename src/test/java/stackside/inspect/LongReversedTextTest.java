package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class LongReversedTextTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new LongReversedText().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void sixLightWords_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.fill(12, 222, 150, 12, Color.BLACK),
                    Overpaint.words(20, 230, "never do this at any time", 14.6, Color.WHITE))));
    assertThat(new LongReversedText().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
