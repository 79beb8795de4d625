package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class RowNotAsApprovedTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new RowNotAsApproved().problems(unit.card(CARD))).isEmpty();
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
    Inspection seen = Inspection.of(unit.file(CARD));
    assertThat(new RowNotAsApproved().problems(approved.card(CARD, seen)))
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
    Inspection seen = Inspection.of(unit.file(CARD));
    assertThat(new RowNotAsApproved().problems(approved.card(CARD, seen))).hasSize(1);
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
    Inspection without = Inspection.of(unit.file(CARD));
    assertThat(new RowNotAsApproved().problems(approved.card(CARD, without)))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("Caution: The wall is thin here. | Cold, no current. Cold snare."));
  }

  @Test
  void pedalThatMustBeLeftAlone_andIsPrinted_isFound() {
    EditedUnit approved = EditedUnit.pressingBlueOnly();
    Inspection both = Inspection.of(unit.file(CARD));
    assertThat(new RowNotAsApproved().problems(approved.card(CARD, both)))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("Blue pedal only. | ", " | Do not press | "));
    assertThat(new RowNotAsApproved().problems(approved.card(CARD))).isEmpty();
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
    assertThat(new RowNotAsApproved().problems(other.card(CARD))).isEmpty();
    assertThat(other.card(CARD).seen().text())
        .contains("Not approved. Refer to the children's hospital. Ask: ENT lead.");
  }
}
