package stackside.derive.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Edited;
import stackside.model.Kind;
import stackside.model.Mode;
import stackside.model.Unit;
import stackside.quantity.Watts;

/** Which settings are compared with each other: those that answers really use. */
final class TogetherTest {

  private static List<Watts> limits(Unit unit, String... modes) {
    List<Mode> of =
        Stream.of(modes).map(mode -> Edited.find(unit, Kind.MODE, mode, Mode.class)).toList();
    return Together.of(Outputs.of(unit), of).settings().stream()
        .map(use -> use.setting().limit().orElseThrow())
        .toList();
  }

  /** Several answers use 60 W on both pedals, fewer use 50 W, and one uses 80 W alone. */
  @Test
  void theSettingsThatMostAnswersSetTogetherAreChosen() {
    assertThat(limits(Units.demonstration(), "cordgrass/gentle-coag", "cordgrass/interval-cut"))
        .containsExactly(new Watts(60), new Watts(60));
  }

  @Test
  void anAnswerThatSetsBothModesIsPreferredToOneThatSetsOne() {
    Unit unit =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
            -      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
            -      blue: {mode: brisk, level: 1, limit: 40 W}
            +      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
            +      blue: unassigned
            """);
    assertThat(limits(unit, "arrowgrass/pulsed-cut", "arrowgrass/brisk"))
        .containsExactly(new Watts(80), new Watts(45));
  }

  @Test
  void aModeThatTheChosenAnswerLeavesOutKeepsItsOwnSetting() {
    assertThat(
            limits(
                Edited.base(""), "arrowgrass/bipolar", "arrowgrass/pulsed-cut", "arrowgrass/brisk"))
        .containsExactly(new Watts(20), new Watts(60), new Watts(40));
  }

  @Test
  void modesThatNoAnswerUsesAndArgonAreLeftOut() {
    assertThat(limits(Edited.base(""), "birch/soft", "birch/argon")).isEmpty();
  }
}
