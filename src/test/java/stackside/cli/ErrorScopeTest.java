package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.content.ReadingFaults;
import stackside.derive.signed.Subjects;
import stackside.inspect.EditedUnit;
import stackside.model.Unit;
import stackside.source.Location;

/** How far a file reaches that could not be read. */
final class ErrorScopeTest {

  private final EditedUnit unit = EditedUnit.untouched();

  private ErrorScope reach(String file) {
    Unit whole = unit.publication().unit();
    return ErrorScope.of(
        ReadingFaults.WRONG_SHAPE.at(Location.startOf(file), "not to be understood"),
        whole,
        Subjects.of(whole),
        unit.reading().sources());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "machines/new.yaml",
        "rooms/new.yaml",
        "profiles/new.yaml",
        "lesions.yaml",
        "assets.csv",
        "approvals.csv",
        "wards/new.yaml",
        "beds.csv"
      })
  void fileOfWhichNobodyKnowsWhatItHolds_touchesEveryCard(String file) {
    assertThat(unit.plans())
        .isNotEmpty()
        .allSatisfy(plan -> assertThat(reach(file).touches(plan, Set.of())).isTrue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"handbook/new.md", "paths/new.yaml", "sources.yaml"})
  void fileOfWhichNothingStandsOnCards_touchesNone(String file) {
    assertThat(unit.plans())
        .allSatisfy(plan -> assertThat(reach(file).touches(plan, Set.of())).isFalse());
  }
}
