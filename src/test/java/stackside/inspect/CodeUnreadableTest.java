package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.source.Problem;

final class CodeUnreadableTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new CodeUnreadable().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void codeOfAnotherCard_isFound() {
    Inspection other = Inspection.of(unit.file("room-2-eq-2-settings"));
    assertThat(new CodeUnreadable().problems(unit.card(CARD, other)))
        .extracting(Problem::message)
        .anyMatch(message -> message.startsWith("the code leads to"));
  }

  @Test
  void wordsInTheClearSpace_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.words(156, 270, "close", 14.6)));
    assertThat(new CodeUnreadable().problems(unit.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.endsWith("modules are clear round the code"));
  }

  @Test
  void cardWithoutACode_isFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).withoutCode().inspection();
    assertThat(new CodeUnreadable().problems(unit.card(CARD, seen))).hasSize(1);
  }

  @Test
  void smallModules_areFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).withCodeHalfAsLarge().inspection();
    assertThat(new CodeUnreadable().problems(unit.card(CARD, seen))).hasSize(1);
  }
}
