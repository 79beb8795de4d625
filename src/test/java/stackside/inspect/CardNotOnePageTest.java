package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;

final class CardNotOnePageTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new CardNotOnePage().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void secondPage_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(unit.file(CARD), (document, content) -> document.addPage(new PDPage())));
    assertThat(new CardNotOnePage().problems(unit.card(CARD, seen))).hasSize(1);
  }

  @Test
  void pageOfAnotherSize_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD),
                (document, content) -> document.getPage(0).setMediaBox(PDRectangle.A3)));
    assertThat(new CardNotOnePage().problems(unit.card(CARD, seen))).hasSize(1);
  }
}
