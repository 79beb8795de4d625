package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import java.awt.Color;
import org.junit.jupiter.api.Test;

/** Rules about contrast and colour. */
final class ColourRulesTest {

  private static final String CARD = "room-1-eq-1-settings";
  private static final EditedUnit UNIT = EditedUnit.untouched();

  @Test
  void greyWords_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.words(20, 230, "grey", 14.6, new Color(0x76, 0x76, 0x76))));
    assertThat(finds("text-contrast-too-low", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void inkOnADarkGround_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.fill(15, 222, 40, 12, Color.DARK_GRAY),
                    Overpaint.words(20, 230, "dark", 14.6))));
    assertThat(finds("text-contrast-too-low", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void sixLightWords_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.fill(12, 222, 150, 12, Color.BLACK),
                    Overpaint.words(20, 230, "never do this at any time", 14.6, Color.WHITE))));
    assertThat(finds("long-reversed-text", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void bareYellow_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD), Overpaint.fill(20, 225, 10, 5, new Color(0xff, 0xd4, 0x00))));
    assertThat(finds("swatch-without-outline", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void lonelyBlue_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD), Overpaint.fill(20, 225, 10, 5, new Color(0x1f, 0x6f, 0xc4))));
    assertThat(finds("colour-without-word", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void colourWithoutWhatItDoes_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.fill(20, 225, 10, 5, new Color(0x1f, 0x6f, 0xc4)),
                    Overpaint.words(20, 236, "blue", 14.6))));
    assertThat(finds("colour-without-word", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void safetyRedBesideSafetyBlue_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.fill(20, 225, 10, 5, new Color(0x9b, 0x24, 0x23)),
                    Overpaint.fill(40, 225, 10, 5, new Color(0x00, 0x53, 0x87)))));
    assertThat(finds("fills-alike-in-grey", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void yellowOutsideTheDrawings_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD), Overpaint.fill(20, 225, 10, 5, new Color(0xff, 0xd4, 0x00))));
    assertThat(finds("colour-out-of-place", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void redWords_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.words(20, 230, "red", 14.6, new Color(0x9b, 0x24, 0x23))));
    assertThat(finds("colour-out-of-place", UNIT.card(CARD, seen))).isNotEmpty();
  }
}
