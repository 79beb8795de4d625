package stackside.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.check.Catalogue;
import stackside.check.CheckedUnit;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.derive.Analysis;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** What a rule is given, and what becomes of what it finds. */
final class RuleTest {

  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Location UNIT_FILE = Location.startOf("unit.yaml");

  private final Analysis analysis = Analysis.of(Units.read("base"));

  @Test
  void ruleMayDependOnTheDay() {
    Rule<CheckedUnit> overdue =
        Rule.error(
            "overdue",
            "a day has passed",
            checked ->
                checked.day().isAfter(DAY)
                    ? List.of(Finding.at(UNIT_FILE, "the day has passed"))
                    : List.of());

    assertThat(overdue.problems(new CheckedUnit(analysis, DAY))).isEmpty();
    assertThat(overdue.problems(new CheckedUnit(analysis, DAY.plusDays(1)))).hasSize(1);
  }

  @Test
  void findingKeepsItsNotesAndItsHelp() {
    Rule<String> rule =
        Rule.warning(
            "a-warning",
            "something is doubtful",
            word ->
                List.of(
                    Finding.at(UNIT_FILE, word + " is doubtful")
                        .note(Location.startOf("rooms/room-1.yaml"), "the other")
                        .help("correct one")));

    assertThat(Catalogue.of(List.of(rule)).problems("this"))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.severity()).isEqualTo(Severity.WARNING);
              assertThat(problem.fault().id()).isEqualTo("a-warning");
              assertThat(problem)
                  .isEqualTo(
                      new Problem(rule.fault(), UNIT_FILE, "this is doubtful")
                          .note(Location.startOf("rooms/room-1.yaml"), "the other")
                          .help("correct one"));
            });
  }
}
