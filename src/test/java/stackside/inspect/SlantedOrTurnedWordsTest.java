package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;

final class SlantedOrTurnedWordsTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new SlantedOrTurnedWords().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void turnedWords_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.turned(20, 230, "turned", 14.6)));
    assertThat(new SlantedOrTurnedWords().problems(unit.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void brokenWord_isFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.words(20, 230, "coagula-", 14.6)));
    assertThat(new SlantedOrTurnedWords().problems(unit.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void italics_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.words(
                    20,
                    230,
                    "slanted",
                    14.6,
                    new PDType1Font(Standard14Fonts.FontName.HELVETICA_OBLIQUE))));
    assertThat(new SlantedOrTurnedWords().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
