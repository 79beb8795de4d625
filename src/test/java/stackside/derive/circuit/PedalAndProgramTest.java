package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.model.SingleFault.WRONG_PEDAL;
import static stackside.model.SingleFault.WRONG_PROGRAM;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.model.Condition;
import stackside.model.OutputSeen;
import stackside.model.PedalColour;
import stackside.model.SelectionKind;
import stackside.model.Tone;

final class PedalAndProgramTest {

  @Test
  void theOtherPedalBringsItsOwnModeSilently() {
    FaultOutcome outcome = Bench.selecting(SelectionKind.BY_PROGRAM).outcome(WRONG_PEDAL);
    Press meantYellow = outcome.presses().get(0);
    assertThat(meantYellow.intended()).isEqualTo(PedalColour.YELLOW);
    assertThat(meantYellow.pressed()).isEqualTo(PedalColour.BLUE);
    assertThat(meantYellow.reach()).isEqualTo(Reach.ANOTHER_SETTING);
    assertThat(outcome.presses().get(1).pressed()).isEqualTo(PedalColour.YELLOW);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void anUnassignedPedalDoesNothing() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .approving("snare", "m1", "cut-2-60", "none")
            .outcome(WRONG_PEDAL);
    assertThat(outcome.presses()).hasSize(1);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.worst().observed()).isEqualTo(Observation.nothingHappens());
    assertThat(outcome.worst().condition()).isEmpty();
  }

  @Test
  void bothPedalsAlikeAreRightEitherWay() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .approving("snare", "m1", "soft-2-60", "soft-2-60")
            .outcome(WRONG_PEDAL);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
  }

  @Test
  void aFootSwitchWithOnePedalHasNoWrongOne() {
    Bench bench = Bench.selecting(SelectionKind.BY_PROGRAM).pedals(PedalColour.BLUE);
    assertThat(bench.outcomes(WRONG_PEDAL)).isEmpty();
    assertThat(bench.circuits().outcomes().get(0).state().pedals())
        .containsExactly(PedalColour.BLUE);
  }

  @Test
  void pedalsAreListedYellowFirst() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PROGRAM).pedals(PedalColour.BLUE, PedalColour.YELLOW);
    assertThat(bench.outcome(WRONG_PEDAL).state().pedals())
        .containsExactly(PedalColour.YELLOW, PedalColour.BLUE);
  }

  @Test
  void anotherProgramForTheSameSocketIsAnotherSetting() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .reading(2, "m1", "cut-4-100", "soft-2-60")
            .wrongProgram(2);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    assertThat(outcome.presses().get(0).reach()).isEqualTo(Reach.ANOTHER_SETTING);
    assertThat(outcome.presses().get(1).reach()).isEqualTo(Reach.AS_APPROVED);
    assertThat(outcome.state().program().shownAs()).contains("P2");
  }

  @Test
  void anotherLimitOrLevelAloneIsAnotherSetting() {
    for (String yellow : List.of("cut-2-65", "cut-3-60")) {
      FaultOutcome outcome =
          Bench.selecting(SelectionKind.BY_PROGRAM)
              .reading(2, "m1", yellow, "soft-2-60")
              .wrongProgram(2);
      assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    }
  }

  @Test
  void whereProgramsSelect_aProgramForAnotherSocketLeavesTheInstrumentDead() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.USUAL, OutputSeen.NONE)
            .reading(2, "m2", "cut-2-60", "soft-2-60")
            .wrongProgram(2);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m2");
    assertThat(outcome.state().selectedBy()).isEqualTo(SelectedBy.PROGRAM);
  }

  @Test
  void whereTheButtonSelects_aProgramLeavesTheSelection() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_BUTTON)
            .reading(2, "m2", "cut-2-60", "soft-2-60")
            .wrongProgram(2);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m1");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
  }

  @Test
  void aBipolarProgramOnAMonopolarSocketBringsNothing() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_BUTTON)
            .reading(2, "bi", "none", "twin-1-30")
            .wrongProgram(2);
    Press blue = outcome.presses().get(1);
    assertThat(blue.reach()).isEqualTo(Reach.NOTHING);
    assertThat(blue.condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(blue.live()).isEmpty();
  }

  @Test
  void aMonopolarProgramOnABipolarSocketBringsNothing() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_BUTTON)
            .keeping("tongs")
            .approving("tongs", "bi", "none", "twin-1-30")
            .reading(2, "m1", "none", "soft-1-30")
            .wrongProgram(2);
    assertThat(outcome.worst().reach()).isEqualTo(Reach.NOTHING);
  }

  @Test
  void slotsThatNobodyKnowsCountTogetherAsOne() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .reading(2, "m1", "cut-2-60", "soft-2-60")
            .outcomes(WRONG_PROGRAM);
    assertThat(outcomes)
        .extracting(outcome -> outcome.deviation().program().orElseThrow().slot())
        .containsExactly(Optional.of(2), Optional.empty());
    assertThat(outcomes.get(0).outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    assertThat(outcomes.get(1).outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    assertThat(outcomes.get(1).worst().reach()).isEqualTo(Reach.UNKNOWN_SETTING);
    assertThat(outcomes.get(1).state().selected().orElseThrow().id().local()).isEqualTo("m1");
  }

  @Test
  void whereEverySlotIsKnownNoneIsUnknown() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .reading(2, "m1", "cut-2-60", "soft-2-60")
            .alsoApproving(3, "m1", "cut-1-30", "soft-1-30")
            .outcomes(WRONG_PROGRAM);
    assertThat(outcomes)
        .extracting(outcome -> outcome.deviation().program().orElseThrow().source())
        .containsExactly(Program.Source.READ, Program.Source.OTHER_PROFILE);
  }

  @Test
  void anAnswerSetByHandHasNoWrongProgram() {
    assertThat(
            Bench.selecting(SelectionKind.BY_PROGRAM)
                .setByHand()
                .reading(2, "m1", "cut-2-60", "soft-2-60")
                .outcomes(WRONG_PROGRAM))
        .isEmpty();
  }

  @Test
  void aProgramWithAnotherVoltageIsWeighed() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .reading(2, "m1", "cut-2-60", "spray-1-30")
            .wrongProgram(2);
    assertThat(outcome.presses().get(1).strained()).hasSize(1);
  }
}
