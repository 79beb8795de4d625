package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

final class RefusalLikeSettingTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(unit.card(CARD).seen().text()).contains("Not approved.");
    assertThat(new RefusalLikeSetting().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void pedalNotToBePressed_isQuiet() {
    EditedUnit one = EditedUnit.pressingBlueOnly();
    assertThat(one.card(CARD).seen().text()).contains("Blue pedal only.").contains("Do not press");
    assertThat(new RefusalLikeSetting().problems(one.card(CARD))).isEmpty();
  }

  @Test
  void refusalsOnWhite_areFound() {
    Inspection seen = Facts.of(Inspection.of(unit.file(CARD))).withoutAreas().inspection();
    assertThat(new RefusalLikeSetting().problems(unit.card(CARD, seen)))
        .isNotEmpty()
        .allSatisfy(problem -> assertThat(problem.message()).contains("stands on white"));
  }

  @Test
  void shadedSetting_isFound() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD), Overpaint.fill(95, 122, 40, 14, new Color(0xe9, 0xeb, 0xee))));
    assertThat(new RefusalLikeSetting().problems(unit.card(CARD, seen)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.message()).contains("shades"));
  }
}
