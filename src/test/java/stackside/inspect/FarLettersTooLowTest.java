package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.source.Problem;

final class FarLettersTooLowTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new FarLettersTooLow().problems(unit.card(CARD))).isEmpty();
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
    Inspection seen = Inspection.of(unit.file(CARD));
    assertThat(new FarLettersTooLow().problems(farther.card(CARD, seen)))
        .extracting(Problem::message)
        .anyMatch(message -> message.contains("See an effect"))
        .anyMatch(message -> message.contains("ext. 100"));
  }
}
