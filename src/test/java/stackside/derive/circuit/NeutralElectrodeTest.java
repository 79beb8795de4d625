package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.derive.circuit.OutcomeClass.BLOCKED_WITH_ALARM;
import static stackside.derive.circuit.OutcomeClass.RIGHT;
import static stackside.derive.circuit.OutcomeClass.SILENT_CROWDED_RETURN;
import static stackside.derive.circuit.OutcomeClass.SILENT_NO_CURRENT;
import static stackside.model.ElectrodeArea.PLAIN;
import static stackside.model.ElectrodeArea.SPLIT;
import static stackside.model.MonitorKind.CONTACT_QUALITY;
import static stackside.model.MonitorKind.CONTINUITY;
import static stackside.model.MonitorKind.NONE;
import static stackside.model.SingleFault.NEUTRAL_CABLE_BROKEN;
import static stackside.model.SingleFault.NEUTRAL_CABLE_OUT;
import static stackside.model.SingleFault.NEUTRAL_OFF_SKIN;
import static stackside.model.SingleFault.NEUTRAL_PARTLY_OFF;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.model.Condition;
import stackside.model.ElectrodeArea;
import stackside.model.MonitorKind;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Tone;

/**
 * Every fault of the neutral electrode, with every monitor and every electrode. A continuity
 * monitor detects faults of the cable but nothing about the skin (AORN 2012 glossary, READ; IEC
 * 60601-2-2, from memory). A contact-quality monitor works only with a split electrode.
 */
final class NeutralElectrodeTest {

  static Stream<Arguments> table() {
    return Stream.of(
        Arguments.of(CONTACT_QUALITY, SPLIT, NEUTRAL_OFF_SKIN, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(
            CONTACT_QUALITY, SPLIT, NEUTRAL_PARTLY_OFF, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(
            CONTACT_QUALITY, SPLIT, NEUTRAL_CABLE_OUT, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(
            CONTACT_QUALITY, SPLIT, NEUTRAL_CABLE_BROKEN, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(CONTACT_QUALITY, PLAIN, NEUTRAL_OFF_SKIN, SILENT_NO_CURRENT, ReturnPath.STRAY),
        Arguments.of(
            CONTACT_QUALITY,
            PLAIN,
            NEUTRAL_PARTLY_OFF,
            SILENT_CROWDED_RETURN,
            ReturnPath.PART_OF_NEUTRAL_ELECTRODE),
        Arguments.of(
            CONTACT_QUALITY, PLAIN, NEUTRAL_CABLE_OUT, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(
            CONTACT_QUALITY, PLAIN, NEUTRAL_CABLE_BROKEN, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(CONTINUITY, PLAIN, NEUTRAL_OFF_SKIN, SILENT_NO_CURRENT, ReturnPath.STRAY),
        Arguments.of(
            CONTINUITY,
            PLAIN,
            NEUTRAL_PARTLY_OFF,
            SILENT_CROWDED_RETURN,
            ReturnPath.PART_OF_NEUTRAL_ELECTRODE),
        Arguments.of(CONTINUITY, PLAIN, NEUTRAL_CABLE_OUT, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(CONTINUITY, PLAIN, NEUTRAL_CABLE_BROKEN, BLOCKED_WITH_ALARM, ReturnPath.NONE),
        Arguments.of(CONTINUITY, SPLIT, NEUTRAL_OFF_SKIN, SILENT_NO_CURRENT, ReturnPath.STRAY),
        Arguments.of(
            CONTINUITY,
            SPLIT,
            NEUTRAL_PARTLY_OFF,
            SILENT_CROWDED_RETURN,
            ReturnPath.PART_OF_NEUTRAL_ELECTRODE),
        Arguments.of(NONE, PLAIN, NEUTRAL_OFF_SKIN, SILENT_NO_CURRENT, ReturnPath.STRAY),
        Arguments.of(
            NONE,
            PLAIN,
            NEUTRAL_PARTLY_OFF,
            SILENT_CROWDED_RETURN,
            ReturnPath.PART_OF_NEUTRAL_ELECTRODE),
        Arguments.of(NONE, SPLIT, NEUTRAL_CABLE_OUT, SILENT_NO_CURRENT, ReturnPath.STRAY),
        Arguments.of(NONE, SPLIT, NEUTRAL_CABLE_BROKEN, SILENT_NO_CURRENT, ReturnPath.STRAY));
  }

  @ParameterizedTest
  @MethodSource("table")
  void faultUnderMonitor(
      MonitorKind monitor,
      ElectrodeArea area,
      SingleFault fault,
      OutcomeClass expected,
      ReturnPath path) {
    FaultOutcome outcome = alarming().monitor(monitor, area).outcome(fault);
    assertThat(outcome.outcomeClass()).isEqualTo(expected);
    assertThat(outcome.presses()).allMatch(press -> press.returnPath() == path);
  }

  private static Bench alarming() {
    return Bench.selecting(SelectionKind.BY_PROGRAM)
        .answering(Condition.NEUTRAL_CIRCUIT_OPEN, Tone.ALARM, OutputSeen.NONE)
        .answering(Condition.NEUTRAL_CONTACT_POOR, Tone.ALARM, OutputSeen.NONE);
  }

  @Test
  void offTheSkinIsAnOpenCircuitAndPartlyOffIsPoorContact() {
    assertThat(alarming().outcome(NEUTRAL_OFF_SKIN).worst().condition())
        .contains(Condition.NEUTRAL_CIRCUIT_OPEN);
    assertThat(alarming().outcome(NEUTRAL_PARTLY_OFF).worst().condition())
        .contains(Condition.NEUTRAL_CONTACT_POOR);
  }

  @Test
  void anAlarmThatDoesNotBlockIsNotBlocked() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.NEUTRAL_CONTACT_POOR, Tone.ALARM, OutputSeen.USUAL)
            .outcome(NEUTRAL_PARTLY_OFF);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.NOTICEABLE);
    assertThat(outcome.worst().reach()).isEqualTo(Reach.AS_APPROVED);
    assertThat(outcome.worst().live()).isNotEmpty();
  }

  @Test
  void aWeakAnswerReachesLess() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.NEUTRAL_CONTACT_POOR, Tone.USUAL, OutputSeen.WEAK)
            .outcome(NEUTRAL_PARTLY_OFF);
    assertThat(outcome.worst().reach()).isEqualTo(Reach.LESS);
    assertThat(outcome.outcomeClass()).isEqualTo(OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void anUnknownAnswerToPoorContactCrowdsTheReturnSilently() {
    FaultOutcome outcome = Bench.selecting(SelectionKind.BY_PROGRAM).outcome(NEUTRAL_PARTLY_OFF);
    assertThat(outcome.outcomeClass()).isEqualTo(SILENT_CROWDED_RETURN);
  }

  @Test
  void aSilentAnswerToAnOpenPlateWithOutputFindsNoWayBack() {
    FaultOutcome outcome =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .answering(Condition.NEUTRAL_CIRCUIT_OPEN, Tone.USUAL, OutputSeen.USUAL)
            .outcome(NEUTRAL_CABLE_OUT);
    assertThat(outcome.outcomeClass()).isEqualTo(SILENT_NO_CURRENT);
    assertThat(outcome.worst().returnPath()).isEqualTo(ReturnPath.STRAY);
  }

  @Test
  void bipolarCurrentDoesNotMissThePlate() {
    Bench bench = alarming().keeping("tongs").approving("tongs", "bi", "none", "twin-1-30");
    assertThat(bench.outcome(NEUTRAL_CABLE_OUT).outcomeClass()).isEqualTo(RIGHT);
    assertThat(bench.withoutPlate().outcomes(NEUTRAL_CABLE_OUT)).isEmpty();
    assertThat(bench.asApproved().get(0).outcomeClass()).isEqualTo(RIGHT);
  }

  @Test
  void withoutAPlateMonopolarCurrentIsNoticedAsAnOpenCircuit() {
    Press press = alarming().withoutPlate().asApproved().get(0);
    assertThat(press.condition()).contains(Condition.NEUTRAL_CIRCUIT_OPEN);
    assertThat(press.outcomeClass()).isEqualTo(BLOCKED_WITH_ALARM);
    Press unwatched =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .monitor(NONE, PLAIN)
            .withoutPlate()
            .asApproved()
            .get(0);
    assertThat(unwatched.returnPath()).isEqualTo(ReturnPath.STRAY);
    assertThat(unwatched.outcomeClass()).isEqualTo(SILENT_NO_CURRENT);
  }
}
