package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;

final class FontNotEmbeddedTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new FontNotEmbedded().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void fontOfThePrinter_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                Overpaint.words(
                    20, 230, "other", 14.6, new PDType1Font(Standard14Fonts.FontName.HELVETICA))));
    assertThat(new FontNotEmbedded().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
