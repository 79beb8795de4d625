package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import stackside.source.Problem;

/** Rules about letters, lines and typefaces. */
final class LetterRulesTest {

  private static final String CARD = "room-1-eq-1-settings";
  private static final EditedUnit UNIT = EditedUnit.untouched();

  @Test
  void capitalsOfTwelvePoints_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(20, 230, "HOLD", 12)));
    assertThat(finds("near-letters-too-low", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void lettersForFifteenHundredMillimetres_areTooLowAtTwoThousand() {
    EditedUnit farther =
        EditedUnit.after(
            """
            === unit.yaml
            -reading-distance: {near: 700 mm, far: 1500 mm}
            +reading-distance: {near: 700 mm, far: 2000 mm}
            """);
    Inspection seen = Inspection.of(UNIT.file(CARD));
    assertThat(finds("far-letters-too-low", farther.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.contains("See an effect"))
        .anyMatch(message -> message.contains("ext. 100"));
  }

  @Test
  void smallLettersOfFourteenPoints_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(20, 230, "wax", 14)));
    assertThat(finds("small-letters-too-low", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void elevenPoints_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(20, 230, "note", 11)));
    assertThat(finds("type-too-small", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void linesFifteenPointsApart_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.both(
                    Overpaint.words(20, 225, "one line", 14.6),
                    Overpaint.words(20, 225 + 15 * 25.4 / 72, "another", 14.6))));
    assertThat(finds("lines-too-close", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void seventyOneLetters_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(UNIT.file(CARD), Overpaint.words(12, 230, "n".repeat(71), 12)));
    assertThat(finds("card-line-too-long", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void turnedWords_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.turned(20, 230, "turned", 14.6)));
    assertThat(finds("slanted-or-turned-words", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void brokenWord_isFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(20, 230, "coagula-", 14.6)));
    assertThat(finds("slanted-or-turned-words", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void italics_areFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.words(
                    20,
                    230,
                    "slanted",
                    14.6,
                    new PDType1Font(Standard14Fonts.FontName.HELVETICA_OBLIQUE))));
    assertThat(finds("slanted-or-turned-words", UNIT.card(CARD, seen))).isNotEmpty();
  }

  @Test
  void fontOfThePrinter_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD),
                Overpaint.words(
                    20, 230, "other", 14.6, new PDType1Font(Standard14Fonts.FontName.HELVETICA))));
    assertThat(finds("font-not-embedded", UNIT.card(CARD, seen))).isNotEmpty();
  }
}
