package stackside.derive.voltage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;

final class VoltageCheckTest {

  @Test
  void theBaseUnitStandsItsVoltages() {
    List<VoltageCheck> checks = VoltageCheck.of(Edited.base(""));
    assertThat(checks).hasSize(6);
    assertThat(checks).noneMatch(VoltageCheck::exceeded);
  }

  /**
   * Rated accessory voltage is a peak voltage (IEC 60601-2-2, from memory); an equal rating is
   * sufficient.
   */
  @ParameterizedTest
  @CsvSource({"1000 V peak,false", "999 V peak,true"})
  void thePeakOfTheLevelAgainstTheRating(String rating, boolean exceeded) {
    List<VoltageCheck> checks =
        VoltageCheck.of(
            Edited.base(
                """
                === cables.yaml
                -- {id: snare-cable, name: Snare cable, plug: three-pin, connector: pin-3, rated-voltage: 4000 V peak}
                +- {id: snare-cable, name: Snare cable, plug: three-pin, connector: pin-3, rated-voltage: %s}
                """
                    .formatted(rating)));
    assertThat(checks.stream().anyMatch(VoltageCheck::exceeded)).isEqualTo(exceeded);
  }

  @Test
  void everyChainThatCanBeBuiltIsWeighed() {
    List<VoltageCheck> checks =
        VoltageCheck.of(
            Edited.base(
                """
                === cables.yaml
                +- {id: extension, name: Extension, plug: three-pin, connector: three-pin, rated-voltage: 900 V peak}
                === rooms/room-1.yaml
                -  cables: [snare-cable]
                +  cables: [snare-cable, extension]
                """));
    assertThat(checks.stream().filter(VoltageCheck::exceeded))
        .hasSize(2)
        .allMatch(check -> check.weakest().part().id().slug().equals("extension"))
        .allMatch(check -> check.pedal().mode().value().id().local().equals("brisk"));
  }
}
