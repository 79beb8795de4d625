package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class TypeTooSmallTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();

  @Test
  void untouchedCard_isQuiet() {
    assertThat(new TypeTooSmall().problems(unit.card(CARD))).isEmpty();
  }

  @Test
  void elevenPoints_areFound() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.words(20, 230, "note", 11)));
    assertThat(new TypeTooSmall().problems(unit.card(CARD, seen))).isNotEmpty();
  }
}
