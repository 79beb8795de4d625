package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stackside.Units;

class UnitTest {
  private final Unit unit = Units.demonstration();

  @Test
  void everyThingOfTheDemonstrationIsFoundByItsId() {
    assertThat(unit.things()).isNotEmpty().allSatisfy(this::isFound);
    assertThat(unit.find(unit.policies().id())).isPresent();
    assertThat(unit.find(unit.sources().id())).isPresent();
  }

  private void isFound(Thing thing) {
    assertThat(unit.find(thing.id())).containsSame(thing);
  }

  @Test
  void theDemonstrationHasThingsOfEveryKind() {
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    unit.things().forEach(thing -> kinds.add(thing.id().kind()));
    kinds.add(unit.policies().id().kind());
    assertThat(kinds).containsExactlyInAnyOrder(Kind.values());
  }

  @Test
  void whatIsNotThereIsNotFound() {
    for (Kind kind : Kind.values()) {
      assertThat(unit.find(new ThingId(kind, "nowhere"))).isEmpty();
    }
    Machine machine = unit.machines().get(0);
    String socket = machine.id().slug() + "/nowhere";
    assertThat(unit.find(new ThingId(Kind.SOCKET, socket))).isEmpty();
  }
}
