package stackside.derive.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;
import stackside.derive.figure.SnareToPad.Station;
import stackside.derive.figure.SnareToPad.Stop;
import stackside.derive.output.Outputs;
import stackside.model.Kind;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.Unit;

/** The numbers in the figures, compared with published ones where these exist. */
final class FigureNumbersTest {

  /**
   * Rows W1 and W1b of the list of published facts. The source gives 1, 0.25 and 0.002 A/cm²
   * (Gershman, Thomson, Veres, textbook chapter 40; read); the exact values are computed from its
   * dimensions.
   */
  @ParameterizedTest
  @CsvSource({
    "LOOP, 0.19635, 1.01859, 1, 0.02",
    "BASE, 0.78540, 0.25465, 0.25, 0.005",
    "PAD, 100, 0.002, 0.002, 1e-9"
  })
  void densityFromSnareToPad(
      Station station, double area, double density, double read, double roundedBy) {
    Stop stop = stop(station);
    assertThat(stop.area().squareCentimetres()).isCloseTo(area, within(5e-6));
    double computed = stop.density().amperesPerSquareCentimetre();
    assertThat(computed).isCloseTo(density, within(5e-6)).isCloseTo(read, within(roundedBy));
  }

  /** W1b: the ratio of the squares of loop and base is 16 (computed). */
  @Test
  void heatingIsTheSquareOfTheDensity() {
    assertThat(stop(Station.LOOP).heating()).isCloseTo(16, within(1e-9));
    assertThat(stop(Station.BASE).heating()).isEqualTo(1);
    assertThat(1 / stop(Station.PAD).heating()).isCloseTo(127.324 * 127.324, within(1.0));
  }

  private static Stop stop(Station station) {
    return SnareToPad.stops().stream()
        .filter(stop -> stop.station() == station)
        .findFirst()
        .orElseThrow();
  }

  /**
   * Heating is proportional to the inverse fourth power of the radius (row 2.2, same chapter;
   * read).
   */
  @Test
  void heatingOfAStalkFallsWithTheFourthPowerOfItsDiameter() {
    List<StalkHeating> stalks = StalkHeating.stalks();
    double widest = stalks.get(0).diameter().value();
    assertThat(stalks)
        .hasSizeGreaterThan(3)
        .allSatisfy(
            stalk ->
                assertThat(stalk.atSameCurrent())
                    .isCloseTo(StrictMath.pow(widest / stalk.diameter().value(), 4), within(1e-9)));
    assertThat(stalks).extracting(StalkHeating::atSameCurrent).isSorted();
  }

  /** At the same power in the same length the rate is P/(A L ρ c): half the width, four times. */
  @Test
  void atTheSamePowerItFallsWithTheSquareOfTheDiameter() {
    List<StalkHeating> stalks = StalkHeating.stalks();
    double widest = stalks.get(0).diameter().value();
    assertThat(stalks)
        .allSatisfy(
            stalk ->
                assertThat(stalk.atSamePower())
                    .isCloseTo(StrictMath.pow(widest / stalk.diameter().value(), 2), within(1e-9)));
  }

  /** Row W14: a gated sine that is on for 6 percent has a crest factor of 5.774 (computed). */
  @Test
  void theWavesOfTheTextbooksHaveTheCrestFactorsOfGatedSines() {
    assertThat(TextbookWave.all())
        .extracting(wave -> Math.round(1000 * wave.crest().factor()) / 1000.0)
        .containsExactly(1.414, 2.0, 2.828, 5.774);
  }

  /**
   * Row W16: 43 °C 60 min = 44 °C 30 = 45 °C 15 = 46 °C 7.5 (Sapareto and Dewey 1984, recalled).
   */
  @Test
  void eachDegreeHalvesTheTimeOfTheSameDose() {
    assertThat(EqualDose.all())
        .extracting(dose -> dose.time().value() / 60)
        .startsWith(60.0, 30.0, 15.0, 7.5)
        .hasSize(8);
  }

  private static ModeWave wave(Unit unit, String mode) {
    return ModeWave.of(Edited.find(unit, Kind.MODE, mode, Mode.class), Outputs.of(unit))
        .orElseThrow();
  }

  /** A crest factor of 1.4 is a rounded sine (row 2.12, Wong Kee Song and Wallace ch. 7; read). */
  @Test
  void crestFactorTellsTheShareOfTimeOfASine() {
    Unit unit = Edited.base("");
    assertThat(wave(unit, "birch/soft").letThrough().share()).isEqualTo(1);
    assertThat(wave(unit, "arrowgrass/brisk").letThrough().share()).isCloseTo(0.125, within(1e-12));
  }

  @Test
  void crestFactorIsWithinTheBurstOfAPulsedModeOnly() {
    Unit unit = Edited.base("");
    assertThat(wave(unit, "arrowgrass/pulsed-cut").withinBurst()).isTrue();
    assertThat(wave(unit, "arrowgrass/brisk").withinBurst()).isFalse();
  }

  @Test
  void ofSeveralLevelsTheOneThatAnswersAskForMostIsDrawn() {
    Unit unit =
        Edited.base(
            """
            === machines/arrowgrass.yaml
            -    crest-factor: 1.5
            +    crest-factor: {1: 1.5, 2: 1.6, 3: 1.8}
            """);
    ModeWave wave = wave(unit, "arrowgrass/pulsed-cut");
    assertThat(wave.level()).contains(new Level("2"));
    assertThat(wave.crest().factor()).isEqualTo(1.6);
    assertThat(wave(unit, "arrowgrass/brisk").level()).isEmpty();
  }

  @Test
  void withoutACrestFactorNothingIsDrawn() {
    Unit unit =
        Edited.base(
            """
            === machines/birch.yaml
            -    crest-factor: 6
            """);
    Mode argon = Edited.find(unit, Kind.MODE, "birch/argon", Mode.class);
    assertThat(ModeWave.of(argon, Outputs.of(unit))).isEqualTo(Optional.empty());
  }
}
