package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.model.Socket;
import stackside.render.PanelPlan.Place;

/** Which sockets are outlined on two panels side by side. */
final class PanelChangesTest {
  private static final Socket ONE = Panels.socket("a", "1", "Monopolar", 1, 1);
  private static final Socket TWO = Panels.socket("b", "2", "Monopolar", 1, 2);

  private static PanelPlan panel(Place... places) {
    return new PanelPlan(Panels.machine(ONE, TWO), List.of(places), Panels.WORDS);
  }

  private static List<String> outlined(PanelPlan plan, PanelPlan other) {
    return PanelChanges.outlined(plan, other).outlined().stream().map(Place::label).toList();
  }

  @Test
  void theSamePanelHasNoOutline() {
    PanelPlan plan = panel(Panels.used(ONE, "Oval snare"), Panels.unused(TWO));
    assertThat(outlined(plan, plan)).isEmpty();
  }

  @Test
  void aSocketThatTakesSomethingElseIsOutlinedOnBoth() {
    PanelPlan here = panel(Panels.used(ONE, "Oval snare"), Panels.unused(TWO));
    PanelPlan there = panel(Panels.used(ONE, "Needle knife"), Panels.unused(TWO));
    assertThat(outlined(here, there)).containsExactly("1");
    assertThat(outlined(there, here)).containsExactly("1");
  }

  @Test
  void aSocketOfAnotherLabelOrPlaceIsOutlined() {
    Socket renamed = Panels.socket("b", "X", "Monopolar", 1, 2);
    Socket moved = Panels.socket("b", "2", "Monopolar", 2, 1);
    PanelPlan here = panel(Panels.used(ONE, "Oval snare"), Panels.unused(TWO));
    assertThat(outlined(panel(Panels.used(ONE, "Oval snare"), Panels.unused(renamed)), here))
        .containsExactly("X");
    assertThat(outlined(panel(Panels.used(ONE, "Oval snare"), Panels.unused(moved)), here))
        .containsExactly("2");
  }

  @Test
  void anotherOutcomeOfAWrongPlugIsOutlined() {
    PanelPlan here = panel(Panels.alsoFits(TWO, "Cable also fits", "usual tone, no current"));
    PanelPlan there = panel(Panels.alsoFits(TWO, "Cable also fits", "alarm, no current"));
    assertThat(outlined(here, there)).containsExactly("2");
  }

  @Test
  void theOutlineIsDrawnAndSaid() {
    PanelPlan here = panel(Panels.used(ONE, "Oval snare"), Panels.unused(TWO));
    PanelPlan there = panel(Panels.used(ONE, "Needle knife"), Panels.unused(TWO));
    Drawing plain = SocketMap.of(here, Sheet.PHONE);
    Drawing marked = SocketMap.of(PanelChanges.outlined(here, there), Sheet.PHONE);
    assertThat(marked.shapes()).hasSize(plain.shapes().size() + 1).containsAll(plain.shapes());
    assertThat(plain.description()).doesNotContain("differs");
    assertThat(marked.description()).containsOnlyOnce("This differs between the two rooms.");
  }
}
