package stackside.generate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.Units;
import stackside.check.ContentRules;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.model.Unit;
import stackside.source.Severity;

/** Generated units are as large as requested, have the same structure, and contain no errors. */
final class GeneratedUnitTest {

  @Test
  void sameSeedGivesTheSameUnit() throws Exception {
    assertThat(GeneratedUnit.of(3, 5)).isEqualTo(GeneratedUnit.of(3, 5));
    assertThat(GeneratedUnit.of(3, 5)).isNotEqualTo(GeneratedUnit.of(3, 6));
  }

  private static int pages(Unit unit, boolean chapters) {
    return (int) unit.handbook().stream().filter(page -> page.isChapter() == chapters).count();
  }

  @Test
  void everythingThatAHospitalHasComesBackOnceAPart(@TempDir Path folder) throws Exception {
    Unit demonstration = Units.demonstration();
    GeneratedUnit.of(11, 3).write(folder);
    Reading reading = Units.reading(folder);
    assertThat(reading.problems()).as(Units.printed(reading)).isEmpty();
    Unit unit = reading.unit().orElseThrow();
    assertThat(unit.rooms()).hasSize(11 * demonstration.rooms().size());
    assertThat(unit.assets()).hasSize(11 * demonstration.assets().size());
    assertThat(unit.machines()).hasSize(11 * demonstration.machines().size());
    assertThat(unit.profiles()).hasSize(11 * demonstration.profiles().size());
    assertThat(unit.handbook())
        .hasSize(11 * pages(demonstration, false) + pages(demonstration, true));
    assertThat(unit.instruments()).hasSize(2 * demonstration.instruments().size());
    assertThat(unit.sites()).hasSize(demonstration.sites().size());
    assertThat(ContentRules.judge(Analysis.of(unit), LocalDate.of(2026, 11, 25)))
        .filteredOn(problem -> problem.severity() == Severity.ERROR)
        .as("errors of the rules")
        .isEmpty();
  }
}
