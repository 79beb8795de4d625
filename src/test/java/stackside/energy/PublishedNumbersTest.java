package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;

/**
 * The physics compared with external numbers, by topic. Each line gives its row in the list of
 * published facts, its source, and how the number is known: READ in the source, COMPUTED from READ
 * inputs or a definition, or MEM for recalled and not verified.
 */
final class PublishedNumbersTest {

  enum Known {
    READ,
    COMPUTED,
    MEM
  }

  record PublishedNumber(
      String row,
      String source,
      Known known,
      String what,
      double expected,
      double tolerance,
      DoubleSupplier computed) {

    @Override
    public String toString() {
      return row + " " + what + " [" + source + ", " + known + "]";
    }
  }

  private static final String DEFINITION = "definition";
  private static final String GERSHMAN = "Gershman, Thomson, Veres, textbook chapter Polypectomy";
  private static final String WONG = "Wong Kee Song and Wallace, ch. 7";
  private static final String BIFULCO = "Bifulco et al., BioMed Eng OnLine 2013;12:80, table 2";
  private static final String TAN = "Tan and Hinberg, IEEE EMBS 1988";
  private static final String PEARCE = "Pearce, Electrosurgery, 1986; densities recalled";
  private static final String STANDARD = "IEC 60601-2-2";

  @ParameterizedTest
  @MethodSource({
    "currentDensityAtLoopBaseAndPlate",
    "energyIsPowerByTime",
    "timeToTheSameRiseFallsWithPower",
    "heatingFactors",
    "riseFollowsCurrentSquared",
    "adiabaticRise",
    "voltsAndAmperesOfSines",
    "crestFactors",
    "leakagePowers",
    "thermalDose",
    "softCoagulationLimitsItself"
  })
  void agrees(PublishedNumber line) {
    assertThat(line.computed().getAsDouble()).isCloseTo(line.expected(), within(line.tolerance()));
  }

  static Stream<PublishedNumber> currentDensityAtLoopBaseAndPlate() {
    Amperes current = new Amperes(0.2);
    Area loop = Area.ofCircle(0.5);
    Area base = Area.ofCircle(1);
    Area plate = Area.ofRectangle(10, 10);
    return Stream.of(
        read("W1", GERSHMAN, "density at the loop, A/cm2", 1, 0.02, () -> density(current, loop)),
        read(
            "W1",
            GERSHMAN,
            "density at the base, A/cm2",
            0.25,
            0.005,
            () -> density(current, base)),
        read(
            "W1",
            GERSHMAN,
            "density at the plate, A/cm2",
            0.002,
            1e-9,
            () -> density(current, plate)),
        read(
            "W1",
            GERSHMAN,
            "plate over loop, about 500",
            500,
            10,
            () -> plate.squareCentimetres() / loop.squareCentimetres()),
        computed("W1b", "W1", "area of the loop, cm2", 0.19635, 5e-6, loop::squareCentimetres),
        computed("W1b", "W1", "area of the base, cm2", 0.78540, 5e-6, base::squareCentimetres),
        computed(
            "W1b", "W1", "density at the loop, A/cm2", 1.01859, 5e-6, () -> density(current, loop)),
        computed(
            "W1b", "W1", "density at the base, A/cm2", 0.25465, 5e-6, () -> density(current, base)),
        computed(
            "W1b",
            "W1",
            "base over loop",
            4,
            1e-9,
            () -> base.squareCentimetres() / loop.squareCentimetres()),
        computed(
            "W1b",
            "W1",
            "plate over loop",
            509.3,
            0.05,
            () -> plate.squareCentimetres() / loop.squareCentimetres()),
        computed(
            "W1b",
            "W1",
            "heat at the loop over heat at the base",
            16,
            1e-9,
            () -> StrictMath.pow(density(current, loop) / density(current, base), 2)));
  }

  static Stream<PublishedNumber> energyIsPowerByTime() {
    return Stream.of(
        read(
            "W2",
            WONG,
            "50 W for 2 s, J",
            100,
            1e-9,
            () -> Joules.of(new Watts(50), new Seconds(2)).value()),
        read(
            "W2",
            WONG,
            "20 W for 5 s, J",
            100,
            1e-9,
            () -> Joules.of(new Watts(20), new Seconds(5)).value()));
  }

  /**
   * The time to the same temperature rise falls as the power rises, because the energy is the same.
   */
  static Stream<PublishedNumber> timeToTheSameRiseFallsWithPower() {
    double[] watts = {50, 100, 150, 200, 300};
    double[][] seconds = {
      {5966, 2983, 1989, 1491, 994},
      {875, 437, 292, 219, 145},
      {164, 82, 55, 41, 27},
      {59, 29, 19, 15, 10},
      {31, 16, 10, 8, 5}
    };
    Stream.Builder<PublishedNumber> lines = Stream.builder();
    for (double[] row : seconds) {
      Joules energy = Joules.of(new Watts(watts[0]), new Seconds(row[0]));
      for (int i = 1; i < watts.length; i++) {
        Watts power = new Watts(watts[i]);
        lines.add(
            read(
                "W3",
                BIFULCO,
                row[0] + " s at 50 W, at " + watts[i] + " W",
                row[i],
                1.1,
                () -> energy.at(power).value()));
      }
    }
    for (int i = 0; i < watts.length; i++) {
      Watts power = new Watts(watts[i]);
      Seconds time = new Seconds(seconds[0][i]);
      lines.add(
          computed(
              "W3b",
              BIFULCO,
              "power by time at " + watts[i] + " W, J",
              298275,
              76,
              () -> Joules.of(power, time).value()));
    }
    Watts blend = new Duty(0.5).averaged(new Watts(50));
    lines.add(
        read(
            "W3b",
            BIFULCO,
            "a blend of half the time takes twice as long",
            2,
            1e-9,
            () -> new Joules(100).at(blend).value() / new Joules(100).at(new Watts(50)).value()));
    return lines.build();
  }

  static Stream<PublishedNumber> heatingFactors() {
    Seconds minute = new Seconds(60);
    return Stream.of(
        computed("W4b", TAN, "1 A for 60 s, A2s", 60, 1e-9, () -> factor(1, minute)),
        computed("W4b", TAN, "2 A for 60 s, A2s", 240, 1e-9, () -> factor(2, minute)),
        computed("W4b", TAN, "3 A for 60 s, A2s", 540, 1e-9, () -> factor(3, minute)),
        computed(
            "W7",
            "Schutt et al., IEEE TBME 2008;55:1881",
            "1 A for 12 min, A2s",
            720,
            1e-9,
            () -> factor(1, new Seconds(720))),
        computed(
            "W15",
            "Nessler et al., IMEKO TC4 2002",
            "0.7 A for 60 s, A2s",
            29.4,
            1e-9,
            () -> factor(0.7, minute)),
        computed(
            "W15",
            DEFINITION,
            "current for 30 A2s in 60 s, A",
            0.7071,
            5e-5,
            () -> Heating.current(new AmpereSquaredSeconds(30), minute).value()),
        mem("1.21", STANDARD, "350 mA for 60 s, A2s", 7.35, 1e-9, () -> factor(0.35, minute)),
        mem("1.21", STANDARD, "500 mA for 60 s, A2s", 15, 1e-9, () -> factor(0.5, minute)));
  }

  /** Rises measured on a gel block: the rise divided by the current squared is roughly constant. */
  static Stream<PublishedNumber> riseFollowsCurrentSquared() {
    Tissue gel = new Tissue(1, 1000, 4000);
    Seconds minute = new Seconds(60);
    double one = new CurrentDensity(0.01).adiabaticRise(gel, minute);
    return Stream.of(
        read(
            "W4",
            TAN,
            "2 A over 1 A, 2.8 to 3.0 over 0.6 to 0.7",
            4.35,
            0.65,
            () -> new CurrentDensity(0.02).adiabaticRise(gel, minute) / one),
        read(
            "W4",
            TAN,
            "3 A over 1 A, 5.2 to 6.0 over 0.6 to 0.7",
            8.65,
            1.35,
            () -> new CurrentDensity(0.03).adiabaticRise(gel, minute) / one));
  }

  static Stream<PublishedNumber> adiabaticRise() {
    Tissue muscle = new Tissue(0.446, 1090, 3421);
    Tissue fat = new Tissue(0.04376, 911, 2348);
    return Stream.of(
        mem("W9", PEARCE, "muscle, 1 A/cm2 for 1 s, K", 60.1, 0.05, () -> rise(1, muscle, 1)),
        mem(
            "W9",
            PEARCE,
            "muscle, 0.25 A/cm2 for 1 s, K",
            3.76,
            0.005,
            () -> rise(0.25, muscle, 1)),
        mem(
            "W9",
            PEARCE,
            "muscle, 0.002 A/cm2 for 60 s, K",
            0.0144,
            5e-5,
            () -> rise(0.002, muscle, 60)),
        mem(
            "W9",
            PEARCE,
            "muscle, 0.007 A/cm2 for 60 s, K",
            0.177,
            5e-4,
            () -> rise(0.007, muscle, 60)),
        mem(
            "W10",
            PEARCE,
            "fat, 0.007 A/cm2 for 60 s, K",
            3.14,
            0.005,
            () -> rise(0.007, fat, 60)));
  }

  static Stream<PublishedNumber> voltsAndAmperesOfSines() {
    double[][] rows = {
      {30, 500, 122.47, 0.2449, 173.2},
      {120, 500, 244.95, 0.4899, 346.4},
      {300, 500, 387.30, 0.7746, 547.7},
      {80, 100, 89.44, 0.8944, 126.5},
      {50, 50, 50.00, 1.000, 70.7}
    };
    Crest sine = new Crest(StrictMath.sqrt(2));
    Stream.Builder<PublishedNumber> lines = Stream.builder();
    for (double[] row : rows) {
      Watts power = new Watts(row[0]);
      Ohms load = new Ohms(row[1]);
      RmsVolts volts = RmsVolts.across(load, power);
      String what = row[0] + " W into " + row[1] + " ohm";
      lines.add(computed("W11", DEFINITION, what + ", V", row[2], 0.005, volts::value));
      lines.add(
          computed(
              "W11",
              DEFINITION,
              what + ", A",
              row[3],
              5e-5,
              () -> Current.through(load, power).value()));
      lines.add(
          computed(
              "W11", DEFINITION, what + ", V peak", row[4], 0.05, () -> sine.peak(volts).value()));
      lines.add(
          computed(
              "2.1",
              DEFINITION,
              what + ", from the voltage",
              row[0],
              1e-9,
              () -> volts.into(load).value()));
      lines.add(
          computed(
              "2.1",
              DEFINITION,
              what + ", from the current",
              row[0],
              1e-9,
              () -> Current.power(Current.through(load, power), load).value()));
    }
    return lines.build();
  }

  static Stream<PublishedNumber> crestFactors() {
    double[][] rows = {{1, 1.414}, {.5, 2}, {.25, 2.828}, {.12, 4.082}, {.06, 5.774}};
    Stream.Builder<PublishedNumber> lines = Stream.builder();
    for (double[] row : rows) {
      lines.add(
          computed(
              "W14",
              DEFINITION,
              "sine let through for " + row[0],
              row[1],
              5e-4,
              () -> Crest.ofGatedSine(new Duty(row[0])).factor()));
    }
    lines.add(
        read(
            "2.12",
            WONG,
            "continuous sine",
            1.4,
            0.05,
            () -> Crest.ofGatedSine(Duty.always()).factor()));
    lines.add(
        read(
            "2.13",
            WONG,
            "6 % of the time, 5 to 7",
            6,
            1,
            () -> Crest.ofGatedSine(new Duty(0.06)).factor()));
    return lines.build();
  }

  static Stream<PublishedNumber> leakagePowers() {
    Ohms load = new Ohms(200);
    return Stream.of(
        computed(
            "1.13",
            "1.10",
            "150 mA into 200 ohm, W",
            4.5,
            1e-9,
            () -> Current.power(new Amperes(0.15), load).value()),
        computed(
            "1.13",
            "1.11",
            "100 mA into 200 ohm, W",
            2,
            1e-9,
            () -> Current.power(new Amperes(0.1), load).value()),
        mem(
            "1.12",
            STANDARD,
            "1 % of 50 W into 200 ohm, A",
            0.0500,
            5e-5,
            () -> Current.through(load, new Watts(0.5)).value()),
        mem(
            "1.12",
            STANDARD,
            "1 % of 80 W into 200 ohm, A",
            0.0632,
            5e-5,
            () -> Current.through(load, new Watts(0.8)).value()),
        mem(
            "1.12",
            STANDARD,
            "1 % of 100 W into 200 ohm, A",
            0.0707,
            5e-5,
            () -> Current.through(load, new Watts(1)).value()),
        mem(
            "1.12",
            STANDARD,
            "1 % of 120 W into 200 ohm, A",
            0.0775,
            5e-5,
            () -> Current.through(load, new Watts(1.2)).value()));
  }

  static Stream<PublishedNumber> thermalDose() {
    double[][] rows = {
      {43, 60, 60}, {44, 30, 60}, {45, 15, 60}, {46, 7.5, 60}, {50, 1, 128}, {42, 240, 60}
    };
    Stream.Builder<PublishedNumber> lines = Stream.builder();
    for (double[] row : rows) {
      lines.add(
          mem(
              "W16",
              "Sapareto and Dewey 1984",
              row[0] + " °C for " + row[1] + " min, min at 43 °C",
              row[2],
              1e-9,
              () -> ThermalDose.at43(row[0], new Seconds(row[1] * 60)).value() / 60));
    }
    return lines.build();
  }

  /**
   * Common practice, no source: a blended cut of about 30 W, and soft coagulation of about 80 W
   * kept below about 200 V peak. The soft mode leads at low loads and gives way as tissue dries.
   */
  static Stream<PublishedNumber> softCoagulationLimitsItself() {
    OutputLimits soft =
        new OutputLimits(
            Optional.empty(), Optional.of(new Watts(80)), new PeakVolts(190), new Crest(1.4142));
    OutputLimits cut =
        new OutputLimits(
            Optional.empty(), Optional.of(new Watts(30)), new PeakVolts(600), new Crest(2));
    return Stream.of(
        new PublishedNumber(
            "2.11",
            "Farin and Grund; ASGE 2013",
            Known.MEM,
            "soft mode, 80 W into 100 ohm",
            80,
            1e-9,
            () -> soft.power(new Ohms(100)).value()),
        new PublishedNumber(
            "2.11",
            "Farin and Grund; ASGE 2013",
            Known.MEM,
            "soft mode, what is left at 1,000 ohm",
            18.05,
            0.01,
            () -> soft.power(new Ohms(1000)).value()),
        new PublishedNumber(
            "2.11",
            "common practice, no source",
            Known.MEM,
            "cut, 30 W held at 1,000 ohm",
            30,
            1e-9,
            () -> cut.power(new Ohms(1000)).value()));
  }

  private static PublishedNumber read(
      String row, String source, String what, double expected, double within, DoubleSupplier by) {
    return new PublishedNumber(row, source, Known.READ, what, expected, within, by);
  }

  private static PublishedNumber computed(
      String row, String source, String what, double expected, double within, DoubleSupplier by) {
    return new PublishedNumber(row, source, Known.COMPUTED, what, expected, within, by);
  }

  private static PublishedNumber mem(
      String row, String source, String what, double expected, double within, DoubleSupplier by) {
    return new PublishedNumber(row, source, Known.MEM, what, expected, within, by);
  }

  private static double density(Amperes current, Area area) {
    return CurrentDensity.of(current, area).amperesPerSquareCentimetre();
  }

  private static double factor(double amperes, Seconds time) {
    return Heating.factor(new Amperes(amperes), time).value();
  }

  private static double rise(double density, Tissue tissue, double seconds) {
    return new CurrentDensity(density).adiabaticRise(tissue, new Seconds(seconds));
  }
}
