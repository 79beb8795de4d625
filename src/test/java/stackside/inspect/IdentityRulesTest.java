package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.inspect.OneRule.finds;

import org.junit.jupiter.api.Test;
import stackside.render.Marking;
import stackside.source.Problem;

/** Rules about which card it is, whom to call and where its code leads. */
final class IdentityRulesTest {

  private static final String CARD = "room-1-eq-1-settings";
  private static final EditedUnit UNIT = EditedUnit.untouched();

  @Test
  void cardOfAnotherRoom_isFound() {
    Inspection other = Inspection.of(UNIT.file("room-2-eq-2-settings"));
    assertThat(finds("identity-incomplete", UNIT.card(CARD, other)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("does not say 'Room 1'"))
        .anyMatch(message -> message.endsWith("does not say 'EQ-1'"));
  }

  @Test
  void issuedCardThatNobodySigned_isFound() {
    EditedUnit issued = EditedUnit.after("", Marking.ISSUED);
    assertThat(finds("identity-incomplete", issued.card(CARD)))
        .extracting(Problem::message)
        .anyMatch(message -> message.contains("'Approved '"))
        .anyMatch(message -> message.contains("'Review by '"));
  }

  @Test
  void draftWithoutItsMark_isFound() {
    EditedUnit issued = EditedUnit.after("", Marking.ISSUED);
    Inspection seen = Inspection.of(issued.file(CARD));
    assertThat(finds("identity-incomplete", UNIT.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("does not say 'DRAFT, do not hang.'"));
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
    Inspection seen = Inspection.of(UNIT.file(CARD));
    assertThat(finds("contact-not-on-card", moved.card(CARD, seen)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.at().file()).isEqualTo("unit.yaml"));
  }

  @Test
  void codeOfAnotherCard_isFound() {
    Inspection other = Inspection.of(UNIT.file("room-2-eq-2-settings"));
    assertThat(finds("code-unreadable", UNIT.card(CARD, other)))
        .extracting(Problem::message)
        .anyMatch(message -> message.startsWith("the code leads to"));
  }

  @Test
  void wordsInTheClearSpace_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(UNIT.file(CARD), Overpaint.words(156, 270, "close", 14.6)));
    assertThat(finds("code-unreadable", UNIT.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("modules are clear around the code"));
  }

  @Test
  void cardWithoutACode_isFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).withoutCode().inspection();
    assertThat(finds("code-unreadable", UNIT.card(CARD, seen))).hasSize(1);
  }

  @Test
  void smallModules_areFound() {
    Inspection seen = Facts.of(Inspection.of(UNIT.file(CARD))).withCodeHalfAsLarge().inspection();
    assertThat(finds("code-unreadable", UNIT.card(CARD, seen))).hasSize(1);
  }
}
