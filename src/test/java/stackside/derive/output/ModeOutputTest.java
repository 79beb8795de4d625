package stackside.derive.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.derive.Edited;
import stackside.energy.LoadSpan;
import stackside.model.Kind;
import stackside.model.Level;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Unit;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;

final class ModeOutputTest {
  private static final String PUBLISHED =
      """
      === machines/arrowgrass.yaml
           pulse: {on: 30 ms, every: 900 ms}
      +    published: {at: {level: 2, limit: 60 W}, points: [[20 ohm, 9 W], [50 ohm, 31 W], [500 ohm, 60 W], [2000 ohm, 41 W], [4000 ohm, 20 W]]}
      """;

  private static Optional<ModeOutput> output(
      Unit unit, String machine, String mode, Optional<String> level, Optional<Double> limit) {
    Machine of = Edited.find(unit, Kind.MACHINE, machine, Machine.class);
    Mode in = Edited.find(unit, Kind.MODE, machine + "/" + mode, Mode.class);
    return ModeOutput.of(of, new ModeSetting(in, level.map(Level::new), limit.map(Watts::new)));
  }

  private static ModeOutput soft(Unit unit) {
    return output(unit, "birch", "soft", Optional.empty(), Optional.of(80.0)).orElseThrow();
  }

  private static ModeOutput cut(Unit unit) {
    return output(unit, "arrowgrass", "pulsed-cut", Optional.of("2"), Optional.of(60.0))
        .orElseThrow();
  }

  /** Soft coagulation limits itself as tissue dries, whereas a cut holds its power. */
  @Test
  void softModeGivesWayWhereACutHolds() {
    Unit unit = Edited.base("");
    assertThat(soft(unit).curve().power(new Ohms(200))).contains(new Watts(80));
    assertThat(soft(unit).dried().orElseThrow().value())
        .isCloseTo(190 / 1.4 * 190 / 1.4 / 1000, within(1e-9));
    assertThat(cut(unit).dried()).contains(new Watts(60));
    assertThat(soft(unit).curve().power(new Ohms(100)).orElseThrow())
        .isGreaterThan(cut(unit).curve().power(new Ohms(100)).orElseThrow());
  }

  @Test
  void fullPowerFlowsUpToTheCorner() {
    Unit unit = Edited.base("");
    LoadSpan full = soft(unit).fullPower().orElseThrow();
    assertThat(full.from()).isEqualTo(new Ohms(50));
    assertThat(full.to().value()).isCloseTo(230.2, within(0.05));
    assertThat(soft(unit).neverReachesLimit()).isFalse();
  }

  @Test
  void aLimitThatNoPublishedLoadLetsThroughIsNeverReached() {
    Unit unit = Edited.base("");
    ModeOutput bipolar =
        output(unit, "arrowgrass", "bipolar", Optional.of("low"), Optional.of(50.0)).orElseThrow();
    assertThat(bipolar.neverReachesLimit()).isFalse();
    Unit narrow =
        Edited.base(
            """
            === machines/birch.yaml
            -load-range: 50 ohm to 4000 ohm
            +load-range: 500 ohm to 4000 ohm
            """);
    assertThat(soft(narrow).neverReachesLimit()).isTrue();
    assertThat(soft(narrow).fullPower()).isEmpty();
  }

  @Test
  void publishedPointsWinForTheirSettingAlone() {
    Unit unit = Edited.base(PUBLISHED);
    assertThat(cut(unit).source()).isEqualTo(ModeOutput.Source.PUBLISHED);
    assertThat(cut(unit).curve().power(new Ohms(50))).contains(new Watts(31));
    ModeOutput other =
        output(unit, "arrowgrass", "pulsed-cut", Optional.of("2"), Optional.of(65.0)).orElseThrow();
    assertThat(other.source()).isEqualTo(ModeOutput.Source.CALCULATED);
    ModeOutput level =
        output(unit, "arrowgrass", "pulsed-cut", Optional.of("3"), Optional.of(60.0)).orElseThrow();
    assertThat(level.source()).isEqualTo(ModeOutput.Source.CALCULATED);
  }

  @Test
  void publishedPointsOutsideTheMachinesLoadsSayNothing() {
    ModeOutput cut = cut(Edited.base(PUBLISHED));
    assertThat(cut.curve().power(new Ohms(30))).isEmpty();
    assertThat(cut.curve().power(new Ohms(3000))).isEmpty();
    assertThat(cut.curve().power(new Ohms(2000))).contains(new Watts(41));
  }

  @Test
  void notForArgon() {
    assertThat(output(Edited.base(""), "birch", "argon", Optional.of("2"), Optional.empty()))
        .isEmpty();
  }

  @Test
  void withoutPeakVoltageNothingIsClaimed() {
    Unit unit =
        Edited.base(
            """
            === machines/birch.yaml
            -    peak-voltage: 190 V peak
            """);
    assertThat(output(unit, "birch", "soft", Optional.empty(), Optional.of(80.0))).isEmpty();
  }

  @Test
  void withoutPowerAndCurrentLimitNothingIsClaimed() {
    assertThat(output(Edited.base(""), "birch", "soft", Optional.empty(), Optional.empty()))
        .isEmpty();
  }

  @Test
  void aModeSetByLevelIsHeldByWhatTheLevelIsRatedFor() {
    Unit unit =
        Edited.base(
            """
            === machines/birch.yaml
            -    power-limit: 10 W to 80 W in steps of 10 W
            +    level: {name: step, names: [low, high]}
            +    rated-power: {low: 40 W, high: 70 W}
            """);
    ModeOutput low =
        output(unit, "birch", "soft", Optional.of("low"), Optional.empty()).orElseThrow();
    assertThat(low.curve().highest()).isEqualTo(new Watts(40));
    Machine birch = Edited.find(unit, Kind.MACHINE, "birch", Machine.class);
    Mode soft = Edited.find(unit, Kind.MODE, "birch/soft", Mode.class);
    assertThat(Outputs.fullyOpen(birch, soft))
        .extracting(output -> output.curve().highest().value())
        .containsExactly(40.0, 70.0);
    assertThat(Measured.rated(soft)).contains(new Watts(70));
  }

  @Test
  void theTableHasTheUsualLoadsAndTheEnds() {
    Unit unit = Edited.base("");
    assertThat(soft(unit).table())
        .extracting(row -> row.load().value())
        .containsExactly(50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 4000.0);
    assertThat(cut(unit).tableLoads()).hasSize(6);
  }

  @Test
  void aRowSaysBurstAndAverage() {
    OutputRow row = cut(Edited.base("")).at(new Ohms(600)).orElseThrow();
    assertThat(row.power()).isEqualTo(new Watts(60));
    assertThat(row.averaged().value()).isCloseTo(2, within(1e-9));
    assertThat(row.current().value()).isCloseTo(StrictMath.sqrt(0.1), within(1e-9));
    assertThat(row.peakVoltage().orElseThrow().value())
        .isCloseTo(1.5 * StrictMath.sqrt(36000), within(1e-9));
    assertThat(cut(Edited.base("")).at(new Ohms(3000))).isEmpty();
  }

  @Test
  void eachSettingInUseStandsOnceWithAllThatAskForIt() {
    Outputs outputs = Outputs.of(Edited.base(""));
    assertThat(outputs.inUse()).hasSize(6);
    assertThat(outputs.inUse()).allMatch(each -> each.asked().size() == 1);
    Unit alike =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
            -      yellow: {mode: pulsed-cut, level: 2, limit: 80 W}
            +      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
            """);
    assertThat(Outputs.of(alike).inUse()).hasSize(5);
    assertThat(Outputs.of(alike).inUse().get(0).asked()).hasSize(2);
    Machine birch = Edited.find(alike, Kind.MACHINE, "birch", Machine.class);
    assertThat(Outputs.of(alike).on(birch))
        .singleElement()
        .satisfies(each -> assertThat(each.output()).isEmpty());
    assertThat(outputs.of(alike.profiles().get(0))).hasSize(2);
  }
}
