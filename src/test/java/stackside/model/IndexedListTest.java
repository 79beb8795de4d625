package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.Units;

final class IndexedListTest {

  private final List<Instrument> instruments = Units.read("base").instruments();
  private final List<ThingId> first = List.of(instruments.get(0).id());

  @Test
  void listOfAUnit_findsWhatIsAsked() {
    assertThat(IndexedList.of(instruments, first)).containsExactly(instruments.get(0));
  }

  @Test
  void plainList_isRefused() {
    assertThatThrownBy(() -> IndexedList.of(List.copyOf(instruments.subList(0, 1)), first))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
