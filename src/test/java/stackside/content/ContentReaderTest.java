package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Unit;

/** Reads whole units. */
final class ContentReaderTest {

  @Test
  void demonstration_readsWithoutAProblem() {
    Unit unit = Units.demonstration();

    assertThat(unit.machines()).isNotEmpty();
    assertThat(unit.broken()).isEmpty();
  }
}
