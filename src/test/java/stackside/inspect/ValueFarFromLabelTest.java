package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ValueFarFromLabelTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new ValueFarFromLabel().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void stepWithoutDots_isFound() {
    InspectedCard setUp = unit.card("room-1-eq-1-set-up");
    assertThat(new ValueFarFromLabel().problems(setUp)).isEmpty();
    Inspection bare = Facts.of(setUp.seen()).withoutAreas().inspection();
    assertThat(new ValueFarFromLabel().problems(unit.card("room-1-eq-1-set-up", bare)))
        .isNotEmpty();
  }
}
