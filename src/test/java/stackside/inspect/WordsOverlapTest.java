package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class WordsOverlapTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new WordsOverlap().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void wordsOverTheMakeSafeBand_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(unit.file(CARD), Overpaint.words(20, 52, "over the band", 14.6)));
    assertThat(new WordsOverlap().problems(unit.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void wordsAcrossAFrame_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.both(
                    Overpaint.fill(100, 225, 10, 10, Color.BLACK),
                    Overpaint.words(95, 232, "across", 14.6))));
    assertThat(new WordsOverlap().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
