package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.derive.circuit.OutcomeClass.RIGHT;
import static stackside.derive.circuit.OutcomeClass.UNINTENDED_INSTRUMENT_LIVE;
import static stackside.model.SingleFault.OTHER_INSTRUMENT_LEFT_IN;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.model.Condition;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.Tone;

final class LeftInTest {

  @Test
  void inTheApprovedSocketItIsLiveInsteadOfTheOneInHand() {
    for (SelectionKind kind : SelectionKind.values()) {
      FaultOutcome outcome =
          Bench.selecting(kind).keeping("snare", "forceps").outcome(OTHER_INSTRUMENT_LEFT_IN, "m1");
      assertThat(outcome.outcomeClass()).as(kind.spoken()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
      assertThat(outcome.worst().reach()).isEqualTo(Reach.NOTHING);
      assertThat(outcome.state().inHand()).isEmpty();
      assertThat(outcome.state().occupants().get(0).use()).isEqualTo(Occupant.Use.LEFT_IN);
    }
  }

  @Test
  void whereTheProgramSelects_anotherSocketStaysDead() {
    for (SelectionKind kind :
        List.of(SelectionKind.BY_PROGRAM, SelectionKind.BY_BUTTON, SelectionKind.BY_FOOT_SWITCH)) {
      FaultOutcome outcome =
          Bench.selecting(kind).keeping("snare", "forceps").outcome(OTHER_INSTRUMENT_LEFT_IN, "m2");
      assertThat(outcome.outcomeClass()).isEqualTo(RIGHT);
      assertThat(outcome.state().occupants()).hasSize(2);
    }
  }

  /** Snare, then another instrument, then the snare again without unplugging and plugging it in. */
  @Test
  void whereThePlugSelects_theLastPlugIsLive() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .keeping("snare", "forceps")
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "cut-1-30", "spray-1-30")
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m2");
    assertThat(outcome.presses().get(1).strained())
        .singleElement()
        .satisfies(strained -> assertThat(strained.chain().end().id().slug()).isEqualTo("forceps"));
  }

  @Test
  void whereNothingSelects_bothAreLive() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.FIXED)
            .keeping("snare", "forceps")
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
    assertThat(outcome.worst().reach()).isEqualTo(Reach.AS_APPROVED);
  }

  @Test
  void whereNothingSelects_theMonopolarPedalLeavesBipolarAndArgonDead() {
    Bench bench = Bench.selecting(SelectionKind.FIXED).keeping("snare", "tongs", "probe");
    assertThat(bench.outcome(OTHER_INSTRUMENT_LEFT_IN, "bi").outcomeClass()).isEqualTo(RIGHT);
    assertThat(bench.outcome(OTHER_INSTRUMENT_LEFT_IN, "ar").outcomeClass()).isEqualTo(RIGHT);
  }

  @Test
  void aPlugThatPicksAnArgonProgramIsLiveWithIt() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .keeping("snare", "probe")
            .pluggingBringsUp("ar", 3)
            .reading(3, "ar", "none", "plasma-2-40")
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "ar");
    assertThat(outcome.presses().get(0).outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.presses().get(1).outcomeClass()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
    assertThat(outcome.outcomeClass()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
  }

  @Test
  void aBlockedMachineMakesNothingLive() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .answering(Condition.NEUTRAL_CIRCUIT_OPEN, Tone.ALARM, OutputSeen.NONE)
            .keeping("tongs", "snare")
            .approving("tongs", "bi", "none", "twin-1-30")
            .withoutPlate()
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "none", "soft-2-60")
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
  }

  @Test
  void anUnknownProgramOnAMonopolarSocketStillNeedsThePlate() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .answering(Condition.NEUTRAL_CIRCUIT_OPEN, Tone.ALARM, OutputSeen.NONE)
            .keeping("tongs", "snare")
            .approving("tongs", "bi", "none", "twin-1-30")
            .withoutPlate()
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "m2");
    assertThat(outcome.worst().condition()).contains(Condition.NEUTRAL_CIRCUIT_OPEN);
  }

  @Test
  void anUnknownProgramOnABipolarSocketNeedsNoPlate() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .keeping("tongs", "snare")
            .outcome(OTHER_INSTRUMENT_LEFT_IN, "bi");
    assertThat(outcome.worst().returnPath()).isEqualTo(ReturnPath.BETWEEN_POLES);
    assertThat(outcome.outcomeClass()).isEqualTo(UNINTENDED_INSTRUMENT_LIVE);
  }

  @Test
  void eachKeptInstrumentIsTriedInEachSocketThatItFits() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .plateSocketTakesThreePin()
            .keeping("snare", "forceps", "knife", "tongs", "orphan")
            .outcomes(OTHER_INSTRUMENT_LEFT_IN);
    assertThat(outcomes)
        .extracting(
            outcome ->
                outcome.deviation().other().orElseThrow().id().slug()
                    + " in "
                    + outcome.deviation().socket().orElseThrow().id().local())
        .containsExactly(
            "forceps in m1", "knife in m1", "forceps in m2", "knife in m2", "tongs in bi");
  }
}
