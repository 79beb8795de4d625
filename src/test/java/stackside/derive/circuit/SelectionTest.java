package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.model.SingleFault.SOCKET_NOT_SELECTED;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.model.Condition;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.Tone;

/** Nobody selected a socket: what power-on selected is still selected. */
final class SelectionTest {

  @Test
  void theButtonThatNobodyPressedLeavesPowerOnsSocketLive() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_BUTTON)
            .atPowerOn("m2")
            .answering(Condition.INSTRUMENT_CIRCUIT_OPEN, Tone.USUAL, OutputSeen.NONE)
            .outcome(SOCKET_NOT_SELECTED);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
    assertThat(outcome.state().selectedBy()).isEqualTo(SelectedBy.POWER_ON);
    assertThat(outcome.worst().live())
        .extracting(live -> live.socket().id().local())
        .containsExactly("m2");
    assertThat(outcome.worst().condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
  }

  @Test
  void whereItIsNotKnownWhatPowerOnSelectsNothingCountsAsSelected() {
    FaultOutcome outcome = Bench.selecting(SelectionKind.BY_BUTTON).outcome(SOCKET_NOT_SELECTED);
    assertThat(outcome.state().selected()).isEmpty();
    assertThat(outcome.worst().live()).isEmpty();
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_NO_CURRENT);
  }

  @Test
  void theSocketThatPowerOnSelectsNeedsNoChoice() {
    assertThat(
            Bench.selecting(SelectionKind.BY_BUTTON).atPowerOn("m1").outcomes(SOCKET_NOT_SELECTED))
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(names = {"BY_PROGRAM", "BY_PLUGGING_IN", "BY_FOOT_SWITCH", "FIXED"})
  void whereNoButtonSelectsNobodyForgetsIt(SelectionKind kind) {
    assertThat(Bench.selecting(kind).atPowerOn("m2").outcomes(SOCKET_NOT_SELECTED)).isEmpty();
  }
}
