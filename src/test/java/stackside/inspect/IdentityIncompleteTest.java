package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.render.Marking;
import stackside.source.Problem;

final class IdentityIncompleteTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new IdentityIncomplete().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void cardOfAnotherRoom_isFound() {
    Inspection other = Inspection.of(unit.file("room-2-eq-2-settings"));
    assertThat(new IdentityIncomplete().problems(unit.card(CARD, other)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("does not say 'Room 1'"))
        .anyMatch(message -> message.endsWith("does not say 'EQ-1'"));
  }

  @Test
  void issuedCardThatNobodySigned_isFound() {
    EditedUnit issued = EditedUnit.after("", Marking.ISSUED);
    assertThat(new IdentityIncomplete().problems(issued.card(CARD)))
        .extracting(Problem::message)
        .anyMatch(message -> message.contains("'Approved '"))
        .anyMatch(message -> message.contains("'Review by '"));
  }

  @Test
  void draftWithoutItsMark_isFound() {
    EditedUnit issued = EditedUnit.after("", Marking.ISSUED);
    Inspection seen = Inspection.of(issued.file(CARD));
    assertThat(new IdentityIncomplete().problems(unit.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("does not say 'DRAFT, do not hang.'"));
  }
}
