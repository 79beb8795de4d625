package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import java.awt.Color;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import stackside.render.Marking;
import stackside.source.Problem;

/** Rules about where things stand on the page. */
final class LayoutRulesTest {

  private static final String CARD = "room-1-eq-1-settings";
  private static final EditedUnit UNIT = EditedUnit.untouched();

  @Test
  void secondPage_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(UNIT.file(CARD), (document, content) -> document.addPage(new PDPage())));
    assertThat(finds("card-not-one-page", UNIT.card(CARD, seen))).hasSize(1);
  }

  @Test
  void pageOfAnotherSize_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                (document, content) -> document.getPage(0).setMediaBox(PDRectangle.A3)));
    assertThat(finds("card-not-one-page", UNIT.card(CARD, seen))).hasSize(1);
  }

  @Test
  void wordsOverTheMakeSafeBand_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(UNIT.file(CARD), Overpaint.words(20, 52, "over the band", 14.6)));
    assertThat(finds("words-overlap", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void wordsAcrossAFrame_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.fill(100, 225, 10, 10, Color.BLACK),
                    Overpaint.words(95, 232, "across", 14.6))));
    assertThat(finds("words-overlap", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void barAtTheEdge_isFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.fill(2, 100, 10, 2, Color.BLACK)));
    assertThat(finds("ink-outside-margin", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void wordsEightMillimetresFromTheEdge_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(8, 230, "near", 14.6)));
    assertThat(finds("words-near-edge", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void stepWithoutDots_isFound() {
    InspectedCard setUp = UNIT.card("room-1-eq-1-set-up");
    assertThat(finds("value-far-from-label", setUp)).isEmpty();
    Inspection bare = Facts.of(setUp.seen()).withoutAreas().inspection();
    assertThat(finds("value-far-from-label", UNIT.card("room-1-eq-1-set-up", bare))).isNotEmpty();
  }

  @Test
  void bandWithoutTheMarkAboveIt_standsElsewhere() {
    EditedUnit clinical =
        EditedUnit.after(
            "=== unit.yaml\n-status: demonstration\n+status: clinical\n", Marking.ISSUED);
    Inspection moved = Inspection.of(clinical.file(CARD));
    assertThat(finds("fixed-part-moved", UNIT.card(CARD, moved)))
        .extracting(Problem::message)
        .anyMatch(message -> message.startsWith("'See an effect before going on.'"));
  }

  @Test
  void wordsAllOverThePage_areFound() {
    Overpaint.Fault fault = Overpaint.words(15, 60, "X".repeat(30), 40);
    for (int line = 1; line < 40; line++) {
      fault = Overpaint.both(fault, Overpaint.words(15, 60 + line * 5, "X".repeat(30), 40));
    }
    Inspection seen = Inspection.of(Overpaint.with(UNIT.file(CARD), fault));
    assertThat(finds("card-crowded", UNIT.card(CARD, seen))).hasSize(1);
  }
}
