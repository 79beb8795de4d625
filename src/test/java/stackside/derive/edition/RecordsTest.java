package stackside.derive.edition;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Json;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SheetRow;

/** What an issue knew of measurement and service, beside what the sheets say now. */
final class RecordsTest {
  private static final Unit UNIT = Units.demonstration();
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
  private static final String FILE = "output-checks.csv";

  private static final String ONE = "asset=EQ-0417 date=2026-01-02 load=500 watts=57";
  private static final String TWO = "asset=EQ-0417 date=2026-01-02 load=200 watts=40";
  private static final String OTHER = "asset=EQ-0418 date=2026-01-03 load=500 watts=41";

  private static List<SheetRow> rows(String... rows) {
    List<SheetRow> all = new ArrayList<>();
    for (String row : rows) {
      List<SheetRow.Cell> cells = new ArrayList<>();
      int line = all.size() + 2;
      for (String cell : row.split(" ", -1)) {
        String[] parts = cell.split("=", 2);
        cells.add(
            new SheetRow.Cell(
                parts[0], parts[1], new Location(FILE, line, cells.size() * 9 + 1, 3)));
      }
      all.add(new SheetRow(new Location(FILE, line, 1, 40), cells));
    }
    return all;
  }

  private static Register knowing(Register before, String... rows) {
    Books books = new Books(Approvals.none(), before);
    Issue issue = Issue.of(books, DAY, Found.of(List.of()));
    Json.Members manifest = Books.manifest(Map.of());
    return books.issued(books.entry(issue, manifest, rows(rows)), manifest).register();
  }

  private static List<Problem> problems(Register register, String... rows) {
    return Records.problems(register, UNIT, rows(rows));
  }

  @Test
  void whatStandsAsItDid_isQuiet() {
    Register register = knowing(Register.none(), ONE, TWO);
    assertThat(problems(register, TWO, OTHER, ONE)).isEmpty();
    assertThat(problems(Register.none(), ONE)).isEmpty();
  }

  @Test
  void aChangedCell_isNamedThere() {
    Register register = knowing(Register.none(), ONE, OTHER);
    String edited = ONE.replace("57", "75");
    assertThat(problems(register, OTHER, edited))
        .singleElement()
        .satisfies(problem -> assertThat(problem.fault()).isEqualTo(RecordFaults.CHANGED))
        .satisfies(problem -> assertThat(problem.at()).isEqualTo(new Location(FILE, 3, 28, 3)))
        .satisfies(
            problem -> assertThat(problem.message()).endsWith("watts '57' then and '75' now"));
  }

  @Test
  void aChangedRowBesideAnUntouchedTwin_isNoTwin() {
    Register register = knowing(Register.none(), ONE, TWO);
    assertThat(problems(register, TWO, TWO.replace("40", "41")))
        .singleElement()
        .satisfies(problem -> assertThat(problem.at().line()).isEqualTo(3));
  }

  @Test
  void aRowThatIsGone_isNamedWithItsGenerator() {
    Register register = knowing(Register.none(), ONE, TWO, OTHER);
    assertThat(problems(register, OTHER))
        .singleElement()
        .satisfies(problem -> assertThat(problem.fault()).isEqualTo(RecordFaults.REMOVED))
        .satisfies(problem -> assertThat(problem.at().file()).isEqualTo(FILE))
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("EQ-0417 of 2026-01-02: load 500, watts 57", "and 1 more"))
        .satisfies(
            problem -> assertThat(problem.notes().get(0).at().file()).isEqualTo("assets.csv"));
  }

  @Test
  void recordsOfAGeneratorThatLeft_mayGoWithIt() {
    Register register = knowing(Register.none(), "asset=EQ-9999 date=2026-01-02 watts=40");
    assertThat(problems(register)).isEmpty();
  }

  @Test
  void aWithdrawnRecord_isQuietAndStaysWithdrawn() {
    Register first = knowing(Register.none(), ONE);
    String withdrawn = ONE + " withdrawn=misread";
    assertThat(problems(first, withdrawn)).isEmpty();
    Register second = knowing(first, withdrawn);
    assertThat(problems(second, withdrawn)).isEmpty();
    assertThat(problems(second, ONE))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.message()).contains("withdrawn 'misread' then and nothing now"));
    assertThat(problems(second, withdrawn.replace("57", "58"))).hasSize(1);
  }

  @Test
  void theRegisterGrowsByWhatIsNew() throws DamagedRegister {
    Register second = knowing(knowing(Register.none(), ONE), ONE, OTHER);
    assertThat(second.entries().get(0).records()).hasSize(1);
    assertThat(second.last().orElseThrow().records())
        .singleElement()
        .satisfies(record -> assertThat(record.asset()).isEqualTo("EQ-0418"));
    assertThat(Register.read(second.text())).isEqualTo(second);
  }

  @Test
  void whatAnIssueForgotIsStillKnownFromTheOneBefore() {
    Register second = knowing(knowing(Register.none(), ONE), OTHER);
    assertThat(problems(second, OTHER)).hasSize(1);
  }

  @Test
  void aRegisterFromBeforeRecordsWereKept_isReadAndBringsNothing() throws DamagedRegister {
    Register old = knowing(Register.none());
    assertThat(old.text()).doesNotContain("records");
    assertThat(Register.read(old.text())).isEqualTo(old);
    assertThat(problems(old, ONE)).isEmpty();
  }
}
