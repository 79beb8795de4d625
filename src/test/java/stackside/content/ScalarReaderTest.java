package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Texts that are not the value that their key takes. */
final class ScalarReaderTest {

  @Test
  void numberWithoutUnit_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:91+4: '2000' has no unit [not-a-quantity] | write a peak voltage as a plain number, a space and V peak or kV peak");
  }

  @Test
  void voltsThatDoNotSayPeak_areRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:91+6: '2000 V' does not say which voltage it is: peak, peak to peak or another [not-a-quantity] | write a peak voltage as a plain number, a space and V peak or kV peak");
  }

  @Test
  void numberWithAZeroInFront_isRefused() {
    assertThat(
            Trial.machine(
                    "continuous, power-limit:",
                    "continuous, level: {name: rung, from: 01, to: 4}, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:117+2: '01' has an unnecessary leading zero [not-a-number] | write a whole number in digits, without sign, unit or leading zero");
  }

  @Test
  void numberWithAUnitWhereNoneBelongs_isRefused() {
    assertThat(
            Trial.machine(
                    "continuous, power-limit:",
                    "continuous, level: {name: rung, from: 1, to: 4 W}, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:124+3: '4 W' is not a whole number [not-a-number] | write a whole number in digits, without sign, unit or leading zero");
  }

  @Test
  void absurdlyLargeNumber_isRefused() {
    assertThat(
            Trial.machine(
                    "continuous, power-limit:",
                    "continuous, level: {name: rung, from: 1, to: 100000}, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:124+6: '100000' is far too large [not-a-number] | write a whole number in digits, without sign, unit or leading zero");
  }

  @Test
  void absurdlyLargeQuantity_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 20000000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:91+15: '20000000 V peak' is far too large for a peak voltage [not-a-quantity] | write a peak voltage as a plain number, a space and V peak or kV peak");
  }

  @Test
  void onWhereYesOrNoBelongs_isRefused() {
    assertThat(Trial.drill("yes", "on").problems())
        .containsExactly(
            "drills/no-effect.yaml:6:11+2: 'on' is neither yes nor no [not-yes-or-no] | write 'yes' or 'no' for 'escalate'");
  }

  @Test
  void trueWhereYesOrNoBelongs_isRefused() {
    assertThat(Trial.drill("yes", "true").problems())
        .containsExactly(
            "drills/no-effect.yaml:6:11+4: 'true' is neither yes nor no [not-yes-or-no] | write 'yes' or 'no' for 'escalate'");
  }

  @Test
  void clockWhereATimeBelongs_isRefused() {
    assertThat(Trial.drill("plug", "plug, takes: 1:30").problems())
        .containsExactly(
            "drills/no-effect.yaml:5:40+4: '1:30' is not a time: its unit ':30' is not s or ms or min [not-a-quantity] | write a time as a plain number, a space and s or ms or min");
  }

  @Test
  void noAsATone_isRefused() {
    assertThat(Trial.drill("usual", "no").problems())
        .containsExactly(
            "drills/no-effect.yaml:3:14+2: 'no' is not a choice for 'tone' [unknown-word] | choose 'usual', 'alarm', 'none' or 'different'");
  }

  @Test
  void wordNearAnother_asksForIt() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolr, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:47+8: 'monopolr' is not a choice for 'kind' [unknown-word] | did you mean 'monopolar'?");
  }

  @Test
  void wordNearNothing_listsTheChoices() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: laser, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:47+5: 'laser' is not a choice for 'kind' [unknown-word] | choose 'monopolar', 'bipolar' or 'argon'");
  }

  @Test
  void unknownKeyOfAMap_asksForTheNearOne() {
    assertThat(
            Trial.bare()
                .with("unit.yaml", Trial.unitFile() + "words: {sockett: jack}\n")
                .problems())
        .containsExactly(
            "unit.yaml:17:9+7: unknown key 'sockett' in 'words' [unknown-key] | did you mean 'socket'?");
  }

  @Test
  void dayBeforeMonth_isRefused() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,cordgrass,2.1,in use,02/05/2024
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:30+10: '02/05/2024' is not a date [not-a-date] | write year, month and day in the form '2026-03-02'");
  }

  @Test
  void dayThatDoesNotExist_isRefused() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,cordgrass,2.1,in use,2024-02-30
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:30+10: '2024-02-30' is not a day in the calendar [not-a-date] | write year, month and day in this order");
  }

  @Test
  void addressWithoutHttps_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "unit.yaml",
                    Trial.unitFile().replace("https://saltings.example/", "saltings.example"))
                .problems())
        .containsExactly(
            "unit.yaml:5:10+16: 'saltings.example' is no address of a website [no-sense] | write the whole address, beginning with 'https://'");
  }

  @Test
  void bandWithoutAnEnd_isRefused() {
    assertThat(Trial.bare().with("unit.yaml", Trial.unitFile().replace("any", "30 kg")).problems())
        .containsExactly(
            "unit.yaml:12:32+5: '30 kg' is not a range of weights [not-a-quantity] | write 'under A', 'A to B', 'B and over' or 'any', each with its unit");
  }

  @Test
  void hoursThatAreNone_areRefused() {
    assertThat(
            Trial.bare()
                .with("unit.yaml", Trial.unitFile().replace("at all times", "sometimes"))
                .problems())
        .containsExactly(
            "unit.yaml:10:73+9: 'sometimes' does not give hours of the week [no-sense] | write days and hours as in 'Monday to Friday 08:00 to 17:00', or 'at all times', or 'all other hours'");
  }

  @Test
  void placeThatIsNone_isRefused() {
    assertThat(Trial.machine("row 1 column 1", "top left").problems())
        .containsExactly(
            "machines/cordgrass.yaml:7:54+8: 'top left' is not a place on a front panel [no-sense] | write it as 'row 1 column 2', counted from the top left, seen from the front");
  }

  @Test
  void pinsThatAreNoPairs_areRefused() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.MACHINE_FILE,
                    Trial.MACHINE
                        + "plugs: [{id: three-pin, name: Three-pin, shape: [[0, 0, 0], [11 mm, 0]]}]\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:11:50+9: an item of 'shape' is not two distances in millimetres [wrong-shape] | write two distances in millimetres in square brackets with a comma between",
            "machines/cordgrass.yaml:11:62+5: '11 mm' is not a distance on a front panel [no-sense] | write millimetres as a plain number without unit, at most 500");
  }

  @Test
  void endlessText_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    "- {id: oval-snare-15, name: "
                        + "x".repeat(2001)
                        + ", kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}")
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+2001: this text is 2001 characters long [too-long] | keep it under 2000 characters");
  }

  @Test
  void endlessQuantity_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:91+201: the text of 'rated-voltage' is 201 characters long [too-long] | look for a quote or a line end that is missing");
  }

  @Test
  void crestFactorUnderOne_isRefused() {
    assertThat(
            Trial.machine("continuous, power-limit:", "continuous, crest-factor: 0.5, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:105+3: a crest factor is 1 or more, and '0.5' is not plausible [no-sense] | write peak voltage divided by root mean square voltage");
  }

  @Test
  void observedWithoutDetails_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.MACHINE_FILE,
                    Trial.MACHINE + "answers: {mains-off: {evidence: observed}}\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:11:33+8: 'observed' does not say when, on which asset and with which software [wrong-shape] | write it as {observed: DATE, asset: NUMBER, software: VERSION}");
  }

  @Test
  void evidenceOfNoKind_listsTheChoices() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.MACHINE_FILE,
                    Trial.MACHINE + "answers: {mains-off: {evidence: rumour}}\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:11:33+6: 'rumour' is not a choice for 'evidence' [unknown-word] | choose 'observed', 'manual', 'assumed' or 'unknown'");
  }

  @Test
  void forNobody_isRefused() {
    assertThat(Trial.bare().with(Trial.DRILL_FILE, Trial.DRILL + "for: everyone\n").problems())
        .containsExactly(
            "drills/no-effect.yaml:7:6+8: 'everyone' is not a choice for 'for' [unknown-word] | write 'all', or keys of its own");
  }

  @Test
  void publishedPointWithoutUnits_isRefused() {
    assertThat(
            Trial.machine(
                    "continuous, power-limit:",
                    "continuous, published: {at: {limit: 60 W}, points: [[50, 31 W]]}, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:132+2: '50' has no unit [not-a-quantity] | write a resistance as a plain number, a space and ohm or kohm");
  }
}
