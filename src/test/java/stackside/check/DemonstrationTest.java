package stackside.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Analysis;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.output.Measured;
import stackside.derive.program.ProgramCheck;
import stackside.derive.program.ProgramChecks;
import stackside.model.Answer;
import stackside.model.AssetStatus;
import stackside.model.Cold;
import stackside.model.MonitorKind;
import stackside.model.NotApproved;
import stackside.model.Profile;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Unit;

/** The demonstration unit: right in itself, and rich enough to meet every rule. */
class DemonstrationTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private final Unit unit = Units.demonstration();
  private final Analysis analysis = Analysis.of(unit);

  @Test
  void hasNoProblemAndNoWarning() {
    assertThat(ContentRules.judge(analysis, DAY)).isEmpty();
  }

  @Test
  void holdsGeneratorsThatDiffer() {
    assertThat(unit.machines())
        .extracting(machine -> machine.selectsSocket().value())
        .containsExactlyInAnyOrder(
            SelectionKind.BY_PROGRAM,
            SelectionKind.BY_PLUGGING_IN,
            SelectionKind.BY_BUTTON,
            SelectionKind.FIXED);
    assertThat(unit.machines())
        .extracting(machine -> machine.monitor().value())
        .contains(MonitorKind.CONTACT_QUALITY, MonitorKind.CONTINUITY);
    assertThat(unit.assets())
        .extracting(asset -> asset.status().value())
        .contains(
            AssetStatus.IN_USE, AssetStatus.SPARE, AssetStatus.ON_LOAN, AssetStatus.QUARANTINED);
  }

  @Test
  void answersWithCurrentColdAndNotAtAll() {
    List<Answer> answers = unit.profiles().stream().map(Profile::answer).toList();
    assertThat(answers).hasSizeGreaterThan(50);
    assertThat(answers).hasAtLeastOneElementOfType(Cold.class);
    assertThat(answers).hasAtLeastOneElementOfType(NotApproved.class);
    assertThat(unit.profiles()).anyMatch(profile -> !profile.preferred());
  }

  @Test
  void wrongSocketIsSilentInTwoWays() {
    Set<OutcomeClass> outcomes =
        analysis.circuits().outcomes().stream()
            .filter(outcome -> outcome.fault() == SingleFault.INSTRUMENT_IN_WRONG_SOCKET)
            .map(outcome -> outcome.outcomeClass())
            .collect(Collectors.toSet());
    assertThat(outcomes)
        .contains(OutcomeClass.SILENT_NO_CURRENT, OutcomeClass.SILENT_OTHER_SETTING);
  }

  @Test
  void storedProgramsAreReadAndAgree() {
    List<ProgramCheck> checks = ProgramChecks.onDay(unit, DAY).all();
    assertThat(checks).isNotEmpty();
    assertThat(checks).extracting(ProgramCheck::verdict).containsOnly(ProgramCheck.Verdict.AGREES);
  }

  @Test
  void softModeMeasuredFarBelowItsDialIsRight() {
    List<Measured> soft =
        Measured.of(unit).stream()
            .filter(each -> each.check().mode().value().id().slug().equals("cordgrass/gentle-coag"))
            .toList();
    assertThat(soft).isNotEmpty();
    assertThat(soft)
        .allMatch(
            each ->
                each.check().watts().value().value()
                    < each.check().limit().orElseThrow().value().value() / 2);
    assertThat(soft).allMatch(each -> each.verdict() == Measured.Verdict.WITHIN);
  }
}
