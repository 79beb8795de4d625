package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.model.SingleFault.ARGON_EMPTY;
import static stackside.model.SingleFault.FOOT_SWITCH_OUT;
import static stackside.model.SingleFault.INSTRUMENT_CABLE_BROKEN;
import static stackside.model.SingleFault.INSTRUMENT_PLUG_LOOSE;
import static stackside.model.SingleFault.MAINS_OFF;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.LampId;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Tone;

/** Loose plugs, broken cables, and things that are missing altogether. */
final class InterruptionTest {

  @Test
  void aLoosePlugOnAMachineThatSensesNothingIsAnOpenCircuit() {
    FaultOutcome outcome = Bench.selecting(SelectionKind.BY_PROGRAM).outcome(INSTRUMENT_PLUG_LOOSE);
    assertThat(outcome.worst().condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(outcome.deviation().integrity()).contains(Occupant.Integrity.LOOSE);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m1");
  }

  @Test
  void aMachineThatSensesPlugsMayOrMayNotFeelALooseOne() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_BUTTON).sensingPlugs().outcomes(INSTRUMENT_PLUG_LOOSE);
    assertThat(outcomes)
        .extracting(outcome -> outcome.worst().condition())
        .containsExactly(
            Optional.of(Condition.SELECTED_SOCKET_EMPTY),
            Optional.of(Condition.INSTRUMENT_CIRCUIT_OPEN));
  }

  @Test
  void whereThePlugSelects_aLoosePlugLosesTheSelection() {
    List<FaultOutcome> outcomes =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN).outcomes(INSTRUMENT_PLUG_LOOSE);
    assertThat(outcomes.get(0).state().selected()).isEmpty();
    assertThat(outcomes.get(0).state().selectedBy()).isEqualTo(SelectedBy.POWER_ON);
    assertThat(outcomes.get(0).worst().condition()).contains(Condition.SELECTED_SOCKET_EMPTY);
    assertThat(outcomes.get(1).state().selectedBy()).isEqualTo(SelectedBy.PLUG);
    assertThat(outcomes.get(1).worst().condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
  }

  @Test
  void whereThePlugSelects_theSelectionFallsBackToPowerOn() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PLUGGING_IN)
            .atPowerOn("m2")
            .outcomes(INSTRUMENT_PLUG_LOOSE)
            .get(0);
    assertThat(outcome.state().selected().orElseThrow().id().local()).isEqualTo("m2");
    assertThat(outcome.worst().condition()).contains(Condition.SELECTED_SOCKET_EMPTY);
  }

  @ParameterizedTest
  @EnumSource(SelectionKind.class)
  void aBrokenCableIsAnOpenCircuitHoweverPlugsAreSensed(SelectionKind kind) {
    FaultOutcome outcome =
        Bench.selecting(kind)
            .sensingPlugs()
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.DIFFERENT, OutputSeen.NONE)
            .outcome(INSTRUMENT_CABLE_BROKEN);
    assertThat(outcome.worst().condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.worst().live()).isNotEmpty();
    assertThat(outcome.worst().returnPath()).isEqualTo(ReturnPath.NONE);
  }

  @Test
  void anAlarmedOpenCircuitIsBlocked() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.ALARM, OutputSeen.NONE)
            .outcome(INSTRUMENT_CABLE_BROKEN);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
    assertThat(outcome.worst().live()).isEmpty();
  }

  @Test
  void withoutFootSwitchOrMainsNothingIsLive() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.FOOT_SWITCH_MISSING, Tone.NONE, OutputSeen.NONE)
            .answering(
                Condition.MAINS_OFF,
                Tone.NONE,
                OutputSeen.NONE,
                Map.of(new LampId("plate-lamp"), "off"),
                Optional.empty(),
                Evidence.Basis.OBSERVED);
    for (SingleFault fault : List.of(FOOT_SWITCH_OUT, MAINS_OFF)) {
      FaultOutcome outcome = bench.outcome(fault);
      assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
      assertThat(outcome.worst().live()).isEmpty();
      assertThat(outcome.worst().reach()).isEqualTo(Reach.NOTHING);
    }
    assertThat(bench.outcome(FOOT_SWITCH_OUT).worst().condition())
        .contains(Condition.FOOT_SWITCH_MISSING);
    assertThat(bench.outcome(MAINS_OFF).worst().condition()).contains(Condition.MAINS_OFF);
    assertThat(bench.outcome(MAINS_OFF).worst().observed().lamps())
        .containsEntry(new LampId("plate-lamp"), "off");
  }

  @Test
  void withoutMainsEverythingIsDarkAndSilentWhateverTheDescriptionLeavesOut() {
    Bench bench =
        Bench.selecting(SelectionKind.BY_PROGRAM).answeringNothingMore(Condition.MAINS_OFF);
    FaultOutcome outcome = bench.outcome(MAINS_OFF);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.worst().reach()).isEqualTo(Reach.NOTHING);
    assertThat(outcome.worst().observed())
        .isEqualTo(new Observation(Tone.NONE, Map.of(), Optional.empty(), true));
    assertThat(outcome.worst().evidence().map(Evidence::basis)).contains(Evidence.Basis.MANUAL);
    FaultOutcome other =
        bench.answeringNothingMore(Condition.FOOT_SWITCH_MISSING).outcome(FOOT_SWITCH_OUT);
    assertThat(other.worst().observed().dark()).isFalse();
    assertThat(other.worst().evidence().map(Evidence::basis)).contains(Evidence.Basis.UNKNOWN);
  }

  @Test
  void anAnswerThatNobodyKnowsCountsAsSilent() {
    for (SingleFault fault : List.of(FOOT_SWITCH_OUT, MAINS_OFF, INSTRUMENT_CABLE_BROKEN)) {
      FaultOutcome outcome = Bench.selecting(SelectionKind.BY_PROGRAM).outcome(fault);
      assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
      assertThat(outcome.worst().evidence().map(Evidence::basis)).contains(Evidence.Basis.UNKNOWN);
      assertThat(outcome.worst().observed()).isEqualTo(Observation.asUsual());
      assertThat(outcome.worst().live().isEmpty()).isEqualTo(fault != INSTRUMENT_CABLE_BROKEN);
    }
  }

  @Test
  void anAnswerOfUnknownEvidenceOrWithoutToneOrOutputCountsAsSilent() {
    Condition open = Condition.INSTRUMENT_CIRCUIT_OPEN;
    Bench alarm =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(
                open,
                Tone.ALARM,
                OutputSeen.NONE,
                Map.of(),
                Optional.empty(),
                Evidence.Basis.UNKNOWN);
    assertThat(alarm.outcome(INSTRUMENT_CABLE_BROKEN).outcomeClass())
        .isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(alarm.answeringWithoutTone(open).outcome(INSTRUMENT_CABLE_BROKEN).outcomeClass())
        .isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(alarm.answeringWithoutOutput(open).outcome(INSTRUMENT_CABLE_BROKEN).outcomeClass())
        .isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
  }

  @Test
  void withoutGasThereIsNoPlasma() {
    Bench argon =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .keeping("probe")
            .approving("probe", "ar", "none", "plasma-2-40");
    assertThat(argon.asApproved().get(0).outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    FaultOutcome unknown = argon.outcome(ARGON_EMPTY);
    assertThat(unknown.worst().condition()).contains(Condition.ARGON_EMPTY);
    assertThat(unknown.worst().reach()).isEqualTo(Reach.NOTHING);
    assertThat(unknown.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    FaultOutcome weak =
        argon.answering(Condition.ARGON_EMPTY, Tone.USUAL, OutputSeen.USUAL).outcome(ARGON_EMPTY);
    assertThat(weak.worst().reach()).isEqualTo(Reach.LESS);
    assertThat(weak.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
    FaultOutcome alarm =
        argon.answering(Condition.ARGON_EMPTY, Tone.ALARM, OutputSeen.NONE).outcome(ARGON_EMPTY);
    assertThat(alarm.outcomeClass()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
  }

  @Test
  void gasMattersOnlyWhereItIsUsed() {
    assertThat(Bench.selecting(SelectionKind.BY_PROGRAM).outcomes(ARGON_EMPTY)).isEmpty();
    FaultOutcome mixed =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .approving("snare", "m1", "cut-2-60", "plasma-2-40")
            .outcome(ARGON_EMPTY);
    assertThat(mixed.presses().get(0).outcomeClass()).isEqualTo(OutcomeClass.RIGHT);
    assertThat(mixed.presses().get(1).outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(mixed.worst()).isEqualTo(mixed.presses().get(1));
  }
}
