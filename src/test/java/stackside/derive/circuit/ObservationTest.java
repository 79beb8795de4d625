package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.model.LampId;
import stackside.model.SingleFault;
import stackside.model.Tone;

final class ObservationTest {
  private static final LampId LAMP = new LampId("plate-lamp");

  private static Observation lamp(String colour) {
    return new Observation(Tone.USUAL, Map.of(LAMP, colour), Optional.empty(), false);
  }

  /** Red indicates a fault in the patient circuit (IEC 60601-2-2, READ). */
  @ParameterizedTest
  @ValueSource(strings = {"red", "Red", "flashing green", "blinking"})
  void aLampThatWarnsIsNotSilent(String colour) {
    assertThat(lamp(colour).silent()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"green", "off", "white"})
  void anyOtherLampIsSilent(String colour) {
    assertThat(lamp(colour).silent()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"USUAL,true", "ALARM,false", "NONE,false", "DIFFERENT,false"})
  void anyToneButTheUsualOneIsHeard(Tone tone, boolean silent) {
    assertThat(new Observation(tone, Map.of(), Optional.empty(), false).silent()).isEqualTo(silent);
  }

  @Test
  void aMessageIsSeen() {
    assertThat(new Observation(Tone.USUAL, Map.of(), Optional.of("Plate"), false).silent()).isFalse();
    assertThat(Observation.asUsual().silent()).isTrue();
    assertThat(Observation.nothingHappens().silent()).isFalse();
  }

  @Test
  void whatADrillLeavesOpenFits() {
    Observation alarm = new Observation(Tone.ALARM, Map.of(LAMP, "red"), Optional.of("Plate"), false);
    assertThat(alarm.fits(Bench.sign(Optional.of(Tone.ALARM), Map.of(), Optional.empty())))
        .isTrue();
    assertThat(alarm.fits(Bench.sign(Optional.empty(), Map.of(LAMP, "red"), Optional.empty())))
        .isTrue();
    assertThat(alarm.fits(Bench.sign(Optional.empty(), Map.of(), Optional.of("Plate")))).isTrue();
  }

  @Test
  void whatADrillSaysMustAgree() {
    Observation alarm = new Observation(Tone.ALARM, Map.of(LAMP, "red"), Optional.of("Plate"), false);
    assertThat(alarm.fits(Bench.sign(Optional.of(Tone.USUAL), Map.of(), Optional.empty())))
        .isFalse();
    assertThat(alarm.fits(Bench.sign(Optional.empty(), Map.of(LAMP, "green"), Optional.empty())))
        .isFalse();
    assertThat(alarm.fits(Bench.sign(Optional.empty(), Map.of(), Optional.of("Gas")))).isFalse();
    assertThat(Observation.asUsual().fits(Bench.sign(Optional.empty(), Map.of(), Optional.of("Gas"))))
        .isFalse();
  }

  @Test
  void aSignOfTissueAloneFitsNothing() {
    assertThat(Observation.asUsual().fits(Bench.sign(Optional.empty(), Map.of(), Optional.empty())))
        .isFalse();
  }

  @ParameterizedTest
  @CsvSource({"green,true", "white,true", "red,false", "off,false", "dark,false", "out,false"})
  void aLampThatIsNotDescribedIsAsUsual(String colour, boolean fits) {
    assertThat(
            Observation.asUsual()
                .fits(Bench.sign(Optional.empty(), Map.of(LAMP, colour), Optional.empty())))
        .isEqualTo(fits);
  }

  @ParameterizedTest
  @CsvSource({"green,false", "red,false", "off,true", "dark,true", "out,true"})
  void withoutMainsALampThatIsNotDescribedIsOut(String colour, boolean fits) {
    Observation dark = new Observation(Tone.NONE, Map.of(), Optional.empty(), true);
    assertThat(dark.fits(Bench.sign(Optional.empty(), Map.of(LAMP, colour), Optional.empty())))
        .isEqualTo(fits);
    assertThat(dark.silent()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(OutcomeClass.class)
  void silentClassesComeFirst(OutcomeClass outcome) {
    assertThat(outcome.silent()).isEqualTo(outcome.compareTo(OutcomeClass.NOTICEABLE) < 0);
  }

  @Test
  void theWorseOfTwo() {
    assertThat(OutcomeClass.RIGHT.worse(OutcomeClass.NOTICEABLE))
        .isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(OutcomeClass.NOTICEABLE.worse(OutcomeClass.RIGHT))
        .isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(OutcomeClass.RIGHT.worse(OutcomeClass.RIGHT)).isEqualTo(OutcomeClass.RIGHT);
  }

  @ParameterizedTest
  @CsvSource({
    "AS_APPROVED,USUAL_EFFECT",
    "ANOTHER_SETTING,OTHER_EFFECT",
    "UNKNOWN_SETTING,OTHER_EFFECT",
    "LESS,WEAK_EFFECT",
    "NOTHING,NO_EFFECT"
  })
  void whatIsSeenAtTheTipFollowsFromWhatReachesIt(Reach reach, Tissue tissue) {
    assertThat(Tissue.of(reach)).isEqualTo(tissue);
  }

  @ParameterizedTest
  @CsvSource({
    "INSTRUMENT_IN_WRONG_SOCKET,INSTRUMENT",
    "INSTRUMENT_PLUG_LOOSE,INSTRUMENT",
    "SOCKET_NOT_SELECTED,SELECTION",
    "OTHER_INSTRUMENT_LEFT_IN,INSTRUMENT",
    "INSTRUMENT_CABLE_BROKEN,INSTRUMENT_CABLE",
    "NEUTRAL_OFF_SKIN,NEUTRAL_ELECTRODE",
    "NEUTRAL_PARTLY_OFF,NEUTRAL_ELECTRODE",
    "NEUTRAL_CABLE_OUT,NEUTRAL_CABLE",
    "NEUTRAL_CABLE_BROKEN,NEUTRAL_CABLE",
    "FOOT_SWITCH_OUT,FOOT_SWITCH",
    "WRONG_PEDAL,FOOT_SWITCH",
    "WRONG_PROGRAM,PROGRAM",
    "ARGON_EMPTY,ARGON",
    "MAINS_OFF,MAINS"
  })
  void everyFaultBelongsToAnItem(SingleFault fault, Item item) {
    assertThat(Item.of(fault)).isEqualTo(item);
  }
}
