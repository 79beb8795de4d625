package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.model.SingleFault.INSTRUMENT_IN_WRONG_SOCKET;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Tone;

final class WrongSocketTest {

  /** The silent wrong socket: the selected one stays selected, and it is empty. */
  @ParameterizedTest
  @EnumSource(names = {"BY_PROGRAM", "BY_BUTTON", "BY_FOOT_SWITCH"})
  void whereThePlugDoesNotSelect_theSelectedSocketIsOpen(SelectionKind kind) {
    FaultOutcome outcome =
        Bench.selecting(kind)
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.USUAL, OutputSeen.NONE)
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    Press press = outcome.worst();
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(press.condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(press.reach()).isEqualTo(Reach.NOTHING);
    assertThat(press.returnPath()).isEqualTo(ReturnPath.NONE);
    assertThat(press.live())
        .singleElement()
        .satisfies(
            live -> {
              assertThat(live.socket().id().local()).isEqualTo("m1");
              assertThat(live.occupants()).isEmpty();
            });
    assertThat(outcome.state().selectedBy()).isEqualTo(SelectedBy.of(kind));
    assertThat(outcome.state().inHand().orElseThrow().socket().id().local()).isEqualTo("m2");
  }

  @Test
  void aMachineThatSensesPlugsFindsTheSelectedSocketEmpty() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .sensingPlugs()
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.USUAL, OutputSeen.NONE)
            .answering(Condition.SELECTED_SOCKET_EMPTY, Tone.ALARM, OutputSeen.NONE)
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.worst().condition()).contains(Condition.SELECTED_SOCKET_EMPTY);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
    assertThat(outcome.worst().live()).isEmpty();
  }

  @Test
  void whereThePlugSelects_theOtherSocketIsLiveWithItsOwnProgram() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "cut-4-100", "spray-2-60")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m2");
    assertThat(outcome.state().selectedBy()).isEqualTo(SelectedBy.PLUG);
    assertThat(outcome.state().program().source()).isEqualTo(Program.Source.READ);
    Press yellow = outcome.presses().get(0);
    assertThat(yellow.reach()).isEqualTo(Reach.ANOTHER_SETTING);
    assertThat(yellow.returnPath()).isEqualTo(ReturnPath.NEUTRAL_ELECTRODE);
    assertThat(yellow.condition()).isEmpty();
    assertThat(yellow.evidence()).isEmpty();
    assertThat(yellow.live().get(0).meaning().known().orElseThrow().level().orElseThrow().text())
        .isEqualTo("4");
  }

  @Test
  void theVoltageThatIsReallyReachedIsWeighedAgainstTheChain() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "cut-4-100", "spray-2-60");
    List<Press> presses = bench.outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2").presses();
    assertThat(presses.get(0).strained()).isEmpty();
    assertThat(presses.get(1).strained())
        .singleElement()
        .satisfies(
            strained -> {
              assertThat(strained.peak().value().value()).isEqualTo(4000);
              assertThat(strained.weakest().part().id().slug()).isEqualTo("snare");
              assertThat(strained.setting().mode().id().local()).isEqualTo("spray");
            });
    assertThat(
            bench
                .cableRated(1000)
                .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2")
                .presses()
                .get(1)
                .strained())
        .singleElement()
        .satisfies(
            strained -> assertThat(strained.weakest().part().id().slug()).isEqualTo("cable"));
  }

  @Test
  void aRatingThatIsJustMetIsNoStrain() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .cableRated(600)
            .reading(2, "m2", "cut-4-100", "soft-2-60");
    assertThat(bench.outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2").presses().get(0).strained())
        .isEmpty();
  }

  @Test
  void theSameProgramOnTheOtherSocketIsRight() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "cut-2-60", "soft-2-60")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    assertThat(outcome.presses()).allMatch(press -> press.reach() == Reach.AS_APPROVED);
  }

  @Test
  void withoutAReadingTheApprovedProfileOfTheSlotCounts() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .alsoApproving(2, "m2", "cut-1-30", "soft-1-30")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.state().program().source()).isEqualTo(Program.Source.OTHER_PROFILE);
    assertThat(outcome.state().program().shownAs()).contains("P2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void aReadingWinsOverTheProfileUntilAnEventEndsIt() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .alsoApproving(2, "m2", "cut-1-30", "soft-1-30")
            .reading(2, "m2", "cut-2-60", "soft-2-60");
    assertThat(bench.outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2").outcomeClass())
        .isEqualTo(OutcomeClass.RIGHT);
    assertThat(
            bench.servicedAfterReading().outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2").outcomeClass())
        .isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void aProgramThatNobodyKnowsIsAnotherSetting() {
    FaultOutcome unread =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 3)
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(unread.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    assertThat(unread.worst().reach()).isEqualTo(Reach.UNKNOWN_SETTING);
    assertThat(unread.state().program().slot()).contains(3);
    FaultOutcome nameless =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN).outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(nameless.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    assertThat(nameless.state().program().source()).isEqualTo(Program.Source.UNKNOWN);
  }

  @Test
  void aPedalThatTheOtherProgramLeavesUnassignedDoesNothing() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "none", "none")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    Press press = outcome.worst();
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(press.observed().tone()).isEqualTo(Tone.NONE);
    assertThat(press.live()).isEmpty();
    assertThat(press.evidence().map(Evidence::basis)).contains(Evidence.Basis.ASSUMED);
  }

  @Test
  void aPedalThatTheReadingLeavesOutIsUnknown() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "cut-2-60", "")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.presses().get(0).reach()).isEqualTo(Reach.AS_APPROVED);
    assertThat(outcome.presses().get(1).reach()).isEqualTo(Reach.UNKNOWN_SETTING);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void aMonopolarInstrumentJoinsOnlyOnePoleOfABipolarSocket() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .keeping("odd-wire")
            .approving("odd-wire", "bi", "none", "twin-1-30")
            .outcomes(SingleFault.INSTRUMENT_CABLE_BROKEN)
            .get(0);
    assertThat(outcome.worst().condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(
            Bench.selecting(SelectionKind.BY_PROGRAM)
                .keeping("odd-wire")
                .approving("odd-wire", "bi", "none", "twin-1-30")
                .asApproved()
                .get(0)
                .reach())
        .isEqualTo(Reach.NOTHING);
  }

  @Test
  void aBipolarInstrumentInAMonopolarSocketIsLiveAgainstThePlate() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .keeping("twin-snare")
            .approving("twin-snare", "m1", "none", "soft-2-60")
            .pluggingBringsUp("m2", 2)
            .reading(2, "m2", "none", "spray-2-60")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.worst().reach()).isEqualTo(Reach.ANOTHER_SETTING);
    assertThat(outcome.worst().returnPath()).isEqualTo(ReturnPath.NEUTRAL_ELECTRODE);
  }

  @Test
  void aPlugInThePlatesSocketPushesThePlateOut() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .plateSocketTakesThreePin()
            .answering(Condition.NEUTRAL_CIRCUIT_OPEN, Tone.ALARM, OutputSeen.NONE);
    FaultOutcome outcome = bench.outcome(INSTRUMENT_IN_WRONG_SOCKET, "n");
    assertThat(outcome.state().neutral()).isEqualTo(NeutralState.CABLE_OUT);
    assertThat(outcome.state().inHand()).isEmpty();
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
  }

  @Test
  void whereThePlugSelectsAPlugInThePlatesSocketSelectsNothing() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .plateSocketTakesThreePin()
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "n");
    assertThat(outcome.state().selected()).isEmpty();
    assertThat(outcome.state().selectedBy()).isEqualTo(SelectedBy.POWER_ON);
  }

  @Test
  void onlySocketsThatTakeThePlugAreTried() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_PROGRAM).outcomes(INSTRUMENT_IN_WRONG_SOCKET);
    assertThat(outcomes)
        .extracting(outcome -> outcome.deviation().socket().map(socket -> socket.id().local()))
        .containsExactly(Optional.of("m2"));
  }

  /**
   * Nothing is selected: all sockets of the mode's kind are live, so the other socket works too.
   */
  @Test
  void whereNothingSelects_theSocketsOfAKindAreLiveTogether() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.FIXED).outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    assertThat(outcome.worst().live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("m1", "m2");
    assertThat(outcome.state().selected()).isEmpty();
  }

  @Test
  void whereNothingSelects_theSocketNamedForPowerOnAloneIsLive() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.FIXED)
            .atPowerOn("m1")
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.worst().live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("m1");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
  }

  @Test
  void whereNothingSelects_argonHasASocketOfItsOwn() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.FIXED)
            .atPowerOn("m1")
            .keeping("probe")
            .approving("probe", "ar", "none", "plasma-2-40")
            .outcomes(SingleFault.INSTRUMENT_CABLE_BROKEN)
            .get(0);
    assertThat(outcome.worst().live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("ar");
  }

  @Test
  void whereNothingSelects_argonSharesTheMonopolarSocketsIfItHasNone() {
    List<Press> presses =
        Bench.selecting(SelectionKind.FIXED)
            .withoutArgonSocket()
            .approving("snare", "m1", "none", "plasma-2-40")
            .asApproved();
    assertThat(presses.get(0).outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    assertThat(presses.get(0).live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("m1", "m2");
    assertThat(
            Bench.selecting(SelectionKind.FIXED)
                .approving("snare", "m1", "none", "plasma-2-40")
                .asApproved()
                .get(0)
                .live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("ar");
  }

  @Test
  void whereNothingSelects_aBipolarPedalLightsTheBipolarSocket() {
    List<Press> presses =
        Bench.selecting(SelectionKind.FIXED)
            .keeping("tongs")
            .approving("tongs", "bi", "none", "twin-1-30")
            .withoutPlate()
            .asApproved();
    assertThat(presses)
        .singleElement()
        .satisfies(
            press -> {
              assertThat(press.outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
              assertThat(press.returnPath()).isEqualTo(ReturnPath.BETWEEN_POLES);
            });
  }

  @Test
  void aSilentAnswerWithAMessageIsNoticeable() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(
                Condition.INSTRUMENT_CIRCUIT_OPEN,
                Tone.USUAL,
                OutputSeen.NONE,
                Map.of(),
                Optional.of("Open"),
                Evidence.Basis.OBSERVED)
            .outcome(INSTRUMENT_IN_WRONG_SOCKET, "m2");
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.worst().evidence().map(Evidence::basis)).contains(Evidence.Basis.OBSERVED);
  }
}
