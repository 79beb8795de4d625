package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import java.awt.Color;
import org.junit.jupiter.api.Test;

/** Rules about cells, rows and what is read aloud. */
final class TableRulesTest {

  private static final String CARD = "room-1-eq-1-settings";
  private static final EditedUnit UNIT = EditedUnit.untouched();

  @Test
  void cellWithoutWords_isFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).with("TD", "").inspection();
    assertThat(finds("empty-cell", UNIT.card(CARD, seen))).hasSize(1);
  }

  @Test
  void anotherLimit_isFoundAtTheProfile() {
    EditedUnit approved =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -      yellow: {mode: pulsed-cut, level: 2, limit: 80 W}
            +      yellow: {mode: pulsed-cut, level: 2, limit: 75 W}
            """);
    Inspection seen = Inspection.of(UNIT.file(CARD));
    assertThat(finds("row-not-as-approved", approved.card(CARD, seen)))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.at().file()).isEqualTo("profiles/arrowgrass.yaml");
              assertThat(problem.message()).contains("75 W");
            });
  }

  @Test
  void anotherColdAnswer_isFound() {
    EditedUnit approved =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -    cold: Cold snare.
            +    cold: Cold forceps.
            """);
    Inspection seen = Inspection.of(UNIT.file(CARD));
    assertThat(finds("row-not-as-approved", approved.card(CARD, seen))).hasSize(1);
  }

  @Test
  void cautionThatIsNotPrinted_isFound() {
    EditedUnit approved =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -    cold: Cold snare.
            +    cold: Cold snare.
            +    caution: The wall is thin here.
            """);
    Inspection without = Inspection.of(UNIT.file(CARD));
    assertThat(finds("row-not-as-approved", approved.card(CARD, without)))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("Caution: The wall is thin here. | Cold, no current. Cold snare."));
  }

  @Test
  void pedalThatMustBeLeftAlone_andIsPrinted_isFound() {
    EditedUnit approved = EditedUnit.pressingBlueOnly();
    Inspection both = Inspection.of(UNIT.file(CARD));
    assertThat(finds("row-not-as-approved", approved.card(CARD, both)))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("Blue pedal only. | ", " | Do not press | "));
    assertThat(finds("row-not-as-approved", approved.card(CARD))).isEmpty();
  }

  @Test
  void capitalsAtTheBeginningOfASentence_makeNoDifference() {
    EditedUnit other =
        EditedUnit.after(
            """
            === unit.yaml
            -  - {id: lead-endoscopist, name: Lead endoscopist}
            +  - {id: lead-endoscopist, name: ENT lead}
            === profiles/arrowgrass.yaml
            -    not-approved: Refer to the children's hospital.
            +    not-approved: refer to the children's hospital
            """);
    assertThat(finds("row-not-as-approved", other.card(CARD))).isEmpty();
    assertThat(other.card(CARD).seen().text())
        .contains("Not approved. Refer to the children's hospital. Ask: ENT lead.");
  }

  @Test
  void refusalsOfTheUntouchedCard_areQuiet() {
    assertThat(UNIT.card(CARD).seen().text()).contains("Not approved.");
    assertThat(finds("refusal-like-setting", UNIT.card(CARD))).isEmpty();
  }

  @Test
  void pedalNotToBePressed_isQuiet() {
    EditedUnit one = EditedUnit.pressingBlueOnly();
    assertThat(one.card(CARD).seen().text()).contains("Blue pedal only.").contains("Do not press");
    assertThat(finds("refusal-like-setting", one.card(CARD))).isEmpty();
  }

  @Test
  void refusalsOnWhite_areFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).withoutAreas().inspection();
    assertThat(finds("refusal-like-setting", UNIT.card(CARD, seen)))
        .isNotEmpty()
        .allSatisfy(problem -> assertThat(problem.message()).contains("is on white"));
  }

  @Test
  void shadedSetting_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                UNIT.file(CARD), Overpaint.fill(95, 122, 40, 14, new Color(0xe9, 0xeb, 0xee))));
    assertThat(finds("refusal-like-setting", UNIT.card(CARD, seen)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.message()).contains("shades"));
  }

  @Test
  void drawingWithoutWords_isFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).with("Figure", "").inspection();
    assertThat(finds("figure-without-words", UNIT.card(CARD, seen))).hasSize(1);
  }

  @Test
  void headerCellWithoutScope_isFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).with("TH", "Program").inspection();
    assertThat(finds("figure-without-words", UNIT.card(CARD, seen))).hasSize(1);
  }
}
