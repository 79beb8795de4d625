package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.render.Marking;
import stackside.source.Problem;

final class FixedPartMovedTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new FixedPartMoved().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void bandWithoutTheMarkAboveIt_standsElsewhere() {
    EditedUnit clinical =
        EditedUnit.after(
            "=== unit.yaml\n-status: demonstration\n+status: clinical\n", Marking.ISSUED);
    Inspection moved = Inspection.of(clinical.file(CARD));
    assertThat(new FixedPartMoved().problems(unit.card(CARD, moved)))
        .extracting(Problem::message)
        .anyMatch(message -> message.startsWith("'See an effect before going on.'"));
  }
}
