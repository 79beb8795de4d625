package stackside.derive.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Profile;
import stackside.model.Unit;

class CoverageTest {
  private final Unit unit = Units.demonstration();

  @Test
  void demonstrationHasOneAnswerToEverything() {
    Coverage coverage = Coverage.of(unit);
    assertThat(coverage.cells()).hasSizeGreaterThan(100);
    assertThat(coverage.gaps()).isEmpty();
    assertThat(coverage.ambiguous()).isEmpty();
  }

  @Test
  void generatorBesideAnotherMayLeaveAQuestionToIt() {
    List<Cell> leftToTheOther =
        Coverage.of(unit).cells().stream()
            .filter(cell -> cell.cover() instanceof Cover.Gap)
            .toList();
    assertThat(leftToTheOther).extracting(cell -> cell.room().title()).containsOnly("Room 3");
    assertThat(leftToTheOther)
        .extracting(cell -> cell.machine().title())
        .contains("Marram Two", "Restharrow");
  }

  @Test
  void questionThatNoGeneratorOfTheRoomAnswersIsAGapOnEach() {
    Unit withoutArgon = without("restharrow");
    assertThat(Coverage.of(withoutArgon).gaps())
        .filteredOn(cell -> cell.lesion().id().slug().equals("angioectasia"))
        .extracting(cell -> cell.asset().title())
        .containsOnly("EQ-0418", "EQ-0602")
        .contains("EQ-0418", "EQ-0602");
  }

  private Unit without(String machine) {
    List<Profile> others =
        unit.profiles().stream()
            .filter(profile -> !profile.machine().value().id().slug().equals(machine))
            .toList();
    return new Unit(
        unit.details(),
        unit.footSwitches(),
        unit.instruments(),
        unit.cables(),
        unit.electrodes(),
        unit.sites(),
        unit.siteGroups(),
        unit.steps(),
        unit.lesions(),
        unit.machines(),
        unit.citations(),
        others,
        unit.assets(),
        unit.programReadings(),
        unit.serviceEvents(),
        unit.outputChecks(),
        unit.rooms(),
        unit.checklists(),
        unit.drills(),
        unit.paths(),
        unit.handbook(),
        unit.signatures(),
        unit.broken());
  }
}
