package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.render.DrillChart.Check;

/** The flow chart of a drill has an exit only where a check can mend the fault. */
final class DrillChartTest {

  private static Drawing chart(Check... checks) {
    return DrillChart.of(
        new DrillChart.Plan(
            "No effect", "usual tone", "Foot off.", List.of(checks), "Stop. Call.", Panels.WORDS),
        Sheet.PAGE);
  }

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Words.class::isInstance)
        .map(shape -> ((Shape.Words) shape).text())
        .toList();
  }

  @Test
  void aCheckThatMendsHasAWayOutAndAWayOn() {
    Drawing chart = chart(new Check("Trace the cable", Optional.of("Socket 1"), true));
    assertThat(words(chart)).contains("Mended: carry on", "not mended", "Trace the cable");
    assertThat(chart.description()).contains("1. Trace the cable: Socket 1; if mended, carry on.");
  }

  @Test
  void whatIsDoneAfterwardsMendsNothing() {
    Drawing chart = chart(new Check("Label the generator", Optional.empty(), false));
    assertThat(words(chart)).contains("Label the generator").doesNotContain("Mended: carry on");
    assertThat(words(chart)).doesNotContain("not mended");
    assertThat(chart.description()).doesNotContain("mended");
  }

  @Test
  void onlySomeChecksMend() {
    Drawing chart =
        chart(
            new Check("Trace the cable", Optional.empty(), true),
            new Check("Keep the cable", Optional.empty(), false));
    assertThat(words(chart).stream().filter("not mended"::equals)).hasSize(1);
  }
}
