package stackside.derive.neutral;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.derive.Edited;

final class ElectrodeLoadTest {

  private static ElectrodeLoad load(String patch, int index) {
    return ElectrodeLoad.of(Edited.base(patch)).get(index);
  }

  @Test
  void onlySettingsThroughAPlateWithPublishedOutput() {
    List<ElectrodeLoad> loads = ElectrodeLoad.of(Edited.base(""));
    assertThat(loads)
        .extracting(load -> load.profile().id().slug() + " " + load.pedal().mode().value().id())
        .containsExactly(
            "arrowgrass-large-caecum mode:arrowgrass/pulsed-cut",
            "arrowgrass-large-caecum mode:arrowgrass/brisk",
            "arrowgrass-large-rectum mode:arrowgrass/pulsed-cut",
            "arrowgrass-large-rectum mode:arrowgrass/brisk");
  }

  /** 60 W into 50 ohm within a burst of 30 ms every 900 ms. */
  @Test
  void aPulsedModeIsAveragedOverItsRhythm() {
    ElectrodeLoad load = load("", 0);
    assertThat(load.withinBurst().value()).isCloseTo(StrictMath.sqrt(1.2), within(1e-9));
    assertThat(load.averaged().value()).isCloseTo(StrictMath.sqrt(1.2 / 30), within(1e-9));
    assertThat(load.throughMinute().value()).isCloseTo(2.4, within(1e-9));
  }

  /** 40 W into 50 ohm: 0.8 A2 by 60 s are 48 A2s. */
  @Test
  void theElectrodesOwnLimitSaysHowMuchOfAMinute() {
    ElectrodeLoad load = load("", 1);
    assertThat(load.throughMinute().value()).isCloseTo(48, within(1e-9));
    assertThat(load.limit().orElseThrow().value()).isEqualTo(30);
    assertThat(load.inAnyMinute().orElseThrow().value()).isCloseTo(37.5, within(1e-9));
  }

  @Test
  void withoutADeclaredLimitNothingIsAllowed() {
    ElectrodeLoad load =
        load(
            """
            === electrodes.yaml
            -- {id: split-adult, name: Split plate for adults, area: split, plug: flat-pin, patients: 15 kg and over, heating-factor: 30 A2s}
            +- {id: split-adult, name: Split plate for adults, area: split, plug: flat-pin, patients: 15 kg and over}
            """,
            1);
    assertThat(load.limit()).isEmpty();
    assertThat(load.inAnyMinute()).isEmpty();
  }
}
