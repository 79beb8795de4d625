package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.CardEntry;

/** Records of measurement and service that somebody alters after an issue, on the demonstration. */
final class KeptRecordsTest {
  private static final String CHECKS = "output-checks.csv";
  private static final String EVENTS = "service-events.csv";
  private static final String MEASURED = "EQ-0417,2026-03-02,probe-coag,3,20 W,100 ohm,20 W";
  private static final String SERVICED =
      "EQ-0209,2026-05-12,service,,Yearly service; new plate socket,\n";

  @TempDir private Path temporary;
  private Office office;

  @BeforeEach
  void startFromTheFirstIssue() throws IOException {
    office = Office.issued(temporary.resolve("unit"));
  }

  @Test
  void anIssueRemembersEveryRecord() throws Exception {
    long rows = 0;
    for (String sheet : List.of(CHECKS, "program-readings.csv", "service-events.csv")) {
      rows += Files.readAllLines(office.folder.resolve("content").resolve(sheet)).size() - 1;
    }
    assertThat(office.register().last().orElseThrow().records()).hasSize(Math.toIntExact(rows));
    office.edit(
        CHECKS,
        "EQ-0418,2026-03-03,interval-cut",
        "EQ-0418,2026-11-20,interval-cut,2,60 W,500 ohm,61 W,Analyser,AP\nEQ-0418,2026-03-03,interval-cut");
    assertThat(office.run("issue", "--on", "2026-11-24")).as(office.told()).isZero();
    assertThat(office.register().last().orElseThrow().records()).hasSize(1);
  }

  @Test
  void whatWasCompared_isSaid() throws IOException {
    assertThat(office.run("check")).isZero();
    assertThat(office.err).contains("note: compared with what 'site' holds as of 2026-");
    assertThat(office.run("check", "--site", "elsewhere")).isZero();
    assertThat(office.err)
        .contains("note: 'elsewhere' holds no issue, so it was compared with none");
  }

  @Test
  void aChangedRecord_isAnErrorOnItsLine() throws IOException {
    office.edit(CHECKS, MEASURED, MEASURED.replace("100 ohm", "50 ohm"));
    List<String> lines = Files.readAllLines(office.folder.resolve("content").resolve(CHECKS));
    int line =
        1
            + lines.indexOf(
                lines.stream().filter(each -> each.contains("50 ohm")).findFirst().orElseThrow());
    assertThat(office.run("check")).isEqualTo(1);
    assertThat(office.err)
        .contains(
            CHECKS + ":" + line + ":", "record-changed", "load '100 ohm' then and '50 ohm' now");
    assertThat(office.run("draft")).isEqualTo(1);
  }

  @Test
  void aChangedRecord_holdsBackTheCardsOfItsGeneratorAndTakesNoneDown() throws Exception {
    office.edit(CHECKS, MEASURED, MEASURED.replace("100 ohm", "50 ohm"));
    office.edit("unit.yaml", "hold still.", "keep still.");
    office.signAll("2026-11-23");
    assertThat(office.run("issue", "--on", "2026-11-24")).isEqualTo(1);
    assertThat(office.out).contains("stays up: ", "print these: ").doesNotContain("out of use");
    assertThat(office.register().cards().values())
        .allMatch(CardEntry::current)
        .allMatch(card -> card.asset().equals("EQ-0417") == (card.edition() == 1));
    assertThat(office.run("check")).as("an issue does not learn the altered record").isEqualTo(1);
  }

  @Test
  void aRecordThatIsGone_isNamedWithItsFileAndGenerator() throws IOException {
    office.edit(EVENTS, SERVICED, "");
    assertThat(office.run("check")).isEqualTo(1);
    assertThat(office.err)
        .contains(EVENTS + ":1:1: error", "EQ-0209 of 2026-05-12: event service", "assets.csv:");
    assertThat(office.run("issue", "--on", "2026-11-24")).isEqualTo(1);
    assertThat(office.out).contains("EQ-0209").doesNotContain("out of use", "take down");
  }

  @Test
  void aWithdrawnRecord_isQuietAndCountsNoMore() throws Exception {
    office.edit(EVENTS, SERVICED, SERVICED.replace(",\n", ",2026-11-22 AB: wrong number\n"));
    assertThat(office.run("check")).as(office.err).isZero();
    assertThat(office.run("issue", "--on", "2026-11-24")).as(office.told()).isZero();
    assertThat(office.register().last().orElseThrow().records()).hasSize(1);
    assertThat(office.page("assets/EQ-0209.html")).contains("wrong number", "Withdrawn on");
    office.edit(EVENTS, ",2026-11-22 AB: wrong number\n", ",\n");
    assertThat(office.run("check")).isEqualTo(1);
  }

  @Test
  void anotherUnitsRegister_isNotComparedWith() throws IOException {
    office.edit(EVENTS, SERVICED, "");
    Files.delete(office.content("approvals.csv"));
    assertThat(office.run("check")).isEqualTo(1);
    assertThat(office.err).contains("[ledger-shortened]");
    office.edit("unit.yaml", "name: Saltings Endoscopy", "name: Dunes Endoscopy");
    assertThat(office.run("check")).as(office.err).isEqualTo(4);
    assertThat(office.err)
        .contains("'site' holds an issue of Saltings Endoscopy, another unit, so it was compared");
  }

  @Test
  void aRowThatCannotBeRead_isToldOfOnce() throws IOException {
    office.edit(CHECKS, MEASURED, MEASURED.replace("100 ohm", "100 ohms"));
    assertThat(office.run("check")).isEqualTo(1);
    assertThat(office.err).contains("not-a-quantity").doesNotContain("record-");
    office.edit(CHECKS, MEASURED.replace("100 ohm", "100 ohms"), "EQ-0417,2026-03-02");
    assertThat(office.run("check")).isEqualTo(1);
    assertThat(office.err).contains("not-csv").doesNotContain("record-");
  }
}
