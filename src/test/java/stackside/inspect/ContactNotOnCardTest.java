package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ContactNotOnCardTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new ContactNotOnCard().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void anotherNumber_isFoundAtTheContact() {
    EditedUnit moved =
        EditedUnit.after(
            """
            === unit.yaml
            -      - {id: duty, role: Duty engineer, phone: ext. 200, hours: all other hours}
            +      - {id: duty, role: Duty engineer, phone: ext. 300, hours: all other hours}
            """);
    Inspection seen = Inspection.of(unit.file(CARD));
    assertThat(new ContactNotOnCard().problems(moved.card(CARD, seen)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.at().file()).isEqualTo("unit.yaml"));
  }
}
