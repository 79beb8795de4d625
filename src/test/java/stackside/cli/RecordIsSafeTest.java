package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;

/** What got through when the record was attacked and mishandled, each as somebody would do it. */
final class RecordIsSafeTest {
  private static final String ORACHE = "profiles/orache.yaml";
  private static final String LIMIT = "{mode: blend, limit: 40 W}";
  private static final String LOWER = "{mode: blend, limit: 35 W}";
  private static final String POLYPS = "room-a-eq-0209-settings-flat-polyps";
  private static final String READINGS = "program-readings.csv";
  private static final Pattern NUMBER = Pattern.compile("Signing sheet (\\S+) for");

  @TempDir private Path temporary;
  private Office office;

  @BeforeEach
  void startFromTheFirstIssue() throws IOException {
    office = Office.issued(temporary.resolve("unit"));
  }

  private int run(String... arguments) {
    return office.run(arguments);
  }

  private CardEntry card(String name) throws Exception {
    return office.register().card(name).orElseThrow();
  }

  private int withdraw(String what, String day, String... more) {
    return decide("withdraw", what, "lead-nurse", day, more);
  }

  private int decide(String command, String what, String role, String day, String... more) {
    return run(
        Stream.concat(
                Stream.of(
                    command,
                    what,
                    "--reason",
                    "Smoke",
                    "--role",
                    role,
                    "--initials",
                    Office.initials(role),
                    "--on",
                    day),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private void changeLimit() throws IOException {
    office.edit(ORACHE, LIMIT, LOWER);
  }

  // The latest decision counts.

  @Test
  void yearlyReview_isRenewedBySigningTheSameAgain() throws IOException {
    office.today = LocalDate.of(2027, 11, 21);
    assertThat(run("check")).isEqualTo(4);
    assertThat(office.out).contains("overdue for review since 2027-11-20: ");
    office.signAll("2027-11-21");
    assertThat(office.out).contains(" signed by medical-physics").doesNotContain("0 signed");
    run("check");
    assertThat(office.out).doesNotContain("overdue for review");
  }

  @Test
  void returnToAnEarlierValue_mustBeSigned() throws Exception {
    changeLimit();
    office.signAll("2026-11-22");
    assertThat(run("issue", "--on", "2026-11-22")).as(office.told()).isZero();
    nothingIsLeftOver();
    office.edit(ORACHE, LOWER, LIMIT);
    assertThat(run("check")).isEqualTo(4);
    assertThat(office.out).contains("changed since it was signed", "limit: 35 W → 40 W");
    assertThat(run("issue", "--on", "2026-11-23")).isEqualTo(4);
    assertThat(office.out).doesNotContain("print these");
    assertThat(card(POLYPS).edition()).isEqualTo(2);
    office.signAll("2026-11-24");
    assertThat(run("check")).as(office.told()).isZero();
  }

  private void nothingIsLeftOver() throws IOException {
    try (Stream<Path> walk = Files.walk(office.folder)) {
      assertThat(walk.map(Path::toString)).noneMatch(path -> path.contains(".stackside-"));
    }
  }

  @Test
  void deletion_mustBeSigned() throws Exception {
    Files.delete(office.content("checklists/end-of-case.yaml"));
    SortedMap<String, Fingerprint> cards = office.bytes("site/cards");
    run("issue", "--on", "2026-11-22");
    assertThat(office.out).contains("checklist:end-of-case").doesNotContain("print these");
    assertThat(office.bytes("site/cards")).isEqualTo(cards);
    assertThat(office.page("standing.html")).contains("end-of-case", "gone from the content");
    office.sign("lead-nurse", "2026-11-22");
    assertThat(office.out).contains("checklist:end-of-case", "to be signed: that it is gone");
    assertThat(Files.readString(office.content(Ledger.FILE)))
        .contains("checklist:end-of-case,gone,");
  }

  @Test
  void noDayRunsBackwardsOrLiesAhead() throws Exception {
    SortedMap<String, Fingerprint> content = office.bytes("content");
    SortedMap<String, Fingerprint> site = office.bytes("site");
    for (String day : List.of("2026-11-20", "2026-12-01")) {
      assertThat(run("issue", "--on", day)).as(day).isEqualTo(2);
      assertThat(office.err).contains("nothing can be decided on that day");
      assertThat(withdraw("asset:EQ-0417", day)).as(day).isEqualTo(2);
      assertThat(run("approve", "--role", "lead-nurse", "--initials", "KM", "--on", day))
          .as(day)
          .isEqualTo(2);
    }
    assertThat(office.bytes("content")).isEqualTo(content);
    assertThat(office.bytes("site")).isEqualTo(site);
  }

  @Test
  void recordsDatedAhead_areErrorsWhateverDayIsLookedAt() throws IOException {
    String row = "EQ-0417,2026-11-04,3,EMR,mono-1,yellow";
    office.edit(READINGS, row, row.replace("2026-11-04", "2062-11-04"));
    office.edit("assets.csv", "2017-09-11", "2042-09-11");
    for (String day : List.of("2026-11-22", "2063-01-01")) {
      assertThat(run("check", "--on", day)).isEqualTo(1);
      assertThat(office.err).contains(READINGS + ":", "assets.csv:", "[dated-ahead]");
    }
  }

  // The site folder is a record.

  @Test
  void draftIntoTheSite_isRefusedInWords() throws IOException {
    SortedMap<String, Fingerprint> site = office.bytes("site");
    for (String out : List.of("site", "site/sub")) {
      assertThat(run("draft", "--out", out)).isEqualTo(2);
      assertThat(office.err).contains("holds what was issued, with its register");
    }
    assertThat(office.bytes("site")).isEqualTo(site);
    assertThat(withdraw("asset:EQ-0417", "2026-11-22")).as(office.told()).isZero();
  }

  @Test
  void olderCopyOfTheSite_isNamedAndOnlyWithdrawWorksOnIt() throws Exception {
    Office.copy(office.site(""), temporary.resolve("older"));
    assertThat(withdraw("asset:EQ-0209", "2026-11-22")).as(office.told()).isZero();
    SmallOffice.delete(office.site(""));
    Office.copy(temporary.resolve("older"), office.site(""));
    assertThat(run("check")).isEqualTo(1);
    assertThat(office.err)
        .contains("the ledger tells of withdrawal 1 of 2026-11-22", "[site-older]");
    assertThat(run("issue", "--on", "2026-11-23")).isEqualTo(1);
    assertThat(office.out).contains("nothing was issued");
    assertThat(withdraw("asset:EQ-0417", "2026-11-23")).as(office.told()).isZero();
  }

  @Test
  void siteThatIsLost_isIssuedAnewWithItsWithdrawalsAndNoNumberTwice() throws Exception {
    withdraw("asset:EQ-0209", "2026-11-22");
    SmallOffice.delete(office.site(""));
    assertThat(run("issue", "--first", "--on", "2026-11-23")).isEqualTo(1);
    assertThat(office.err).contains("[site-older]", "--site-lost");
    run("issue", "--site-lost", "--on", "2026-11-23");
    assertThat(office.register().last(Deed.ISSUE)).isEqualTo(2);
    assertThat(office.register().stops()).containsOnlyKeys("asset:EQ-0209");
    assertThat(office.site("cards/room-a-eq-0209-set-up.pdf")).doesNotExist();
    assertThat(office.site("cards/room-2-eq-0417-set-up.pdf")).exists();
    assertThat(run("check")).as(office.told()).isZero();
  }

  @Test
  void issueThatWasLost_givesItsNumbersToNoOther() throws Exception {
    Office.copy(office.site(""), temporary.resolve("older"));
    changeLimit();
    office.signAll("2026-11-22");
    run("issue", "--on", "2026-11-22");
    String first = card(POLYPS).fingerprint();
    SmallOffice.delete(office.site(""));
    Office.copy(temporary.resolve("older"), office.site(""));
    office.edit(ORACHE, LOWER, "{mode: blend, limit: 45 W}");
    office.signAll("2026-11-23");
    assertThat(run("issue", "--on", "2026-11-23")).as(office.told()).isZero();
    assertThat(office.out)
        .contains(
            "issue 2 of 2026-11-22 was begun and lost; its number and its editions are not given",
            "take down, if it was printed: Room A, EQ-0209: Settings, flat polyps, edition 2");
    assertThat(office.register().last(Deed.ISSUE)).isEqualTo(3);
    assertThat(card(POLYPS).edition()).isEqualTo(3);
    assertThat(card(POLYPS).fingerprint()).isNotEqualTo(first);
  }

  @Tag("thorough")
  @Test
  void twoThatIssuedApart_areBothRefused() throws Exception {
    Office other = Office.at(temporary.resolve("other"));
    changeLimit();
    office.signAll("2026-11-22");
    Office.copy(office.folder, other.folder);
    run("issue", "--on", "2026-11-22");
    withdraw("asset:EQ-0417", "2026-11-22");
    other.run("issue", "--on", "2026-11-23");
    SmallOffice.delete(office.site(""));
    Office.copy(other.site(""), office.site(""));
    assertThat(run("issue", "--on", "2026-11-24")).isEqualTo(1);
    assertThat(office.err).contains("[issued-apart]", "decide which of the two is right");
  }

  @Test
  void cardOfAnEditionThatStays_isNotCarriedOnWhenItsFileWasReplaced() throws Exception {
    changeLimit();
    Files.writeString(office.site(card(POLYPS).path()), "another card");
    assertThat(run("issue", "--on", "2026-11-22")).isEqualTo(4);
    assertThat(office.out)
        .contains("the file cards/" + POLYPS + ".pdf of an edition in use is lost, or not as");
    assertThat(office.site("cards/" + POLYPS + ".pdf")).doesNotExist();
  }

  @Test
  void withdrawalCarriesNoReplacedCardOn() throws Exception {
    Files.writeString(office.site(card(POLYPS).path()), "another card");
    assertThat(withdraw("asset:EQ-0417", "2026-11-22")).as(office.told()).isZero();
    assertThat(office.err).contains("the file cards/" + POLYPS + ".pdf is not as it was issued");
    assertThat(office.site("cards/" + POLYPS + ".pdf")).doesNotExist();
    run("issue", "--on", "2026-11-22");
    assertThat(office.site("cards/" + POLYPS + ".pdf")).isNotEmptyFile();
  }

  // Stops act unsigned, permissions wait.

  @Test
  void withdrawalWithTheSiteAlone_isAdoptedByTheNextIssue() throws Exception {
    assertThat(withdraw("asset:EQ-0209", "2026-11-22", "--content", "nowhere")).isZero();
    assertThat(office.err).contains("the ledger was not at hand");
    run("issue", "--on", "2026-11-23");
    assertThat(office.register().stops()).containsOnlyKeys("asset:EQ-0209");
    assertThat(Files.readString(office.content(Ledger.FILE))).contains(",withdrawal:1,");
    assertThat(run("check")).as(office.told()).isZero();
  }

  @Test
  void takeDownListOnAFullDevice_isAFailureThatIsSaid() throws Exception {
    try (OutputStream full = new FileOutputStream("/dev/full")) {
      int code =
          office.runInto(
              full,
              "withdraw",
              "asset:EQ-0417",
              "--reason",
              "Smoke",
              "--role",
              "lead-nurse",
              "--initials",
              "KM",
              "--on",
              "2026-11-22");
      assertThat(code).isEqualTo(3);
    }
    assertThat(office.err).contains("not all of the results could be written");
    assertThat(office.page("cards.html")).contains("out of use");
  }

  @Test
  void scannedAddressCapitalsAndALinkedFolder_areUnderstood() throws Exception {
    Files.createSymbolicLink(office.folder.resolve("linked"), office.site(""));
    String scanned =
        "HTTPS://SALTINGS.EXAMPLE/C/"
            + card(POLYPS).code().toUpperCase(java.util.Locale.ROOT)
            + "#1";
    assertThat(withdraw(scanned, "2026-11-22", "--out", "linked")).as(office.told()).isZero();
    assertThat(card(POLYPS).current()).isFalse();
    assertThat(withdraw("eq-0417", "2026-11-22")).as(office.told()).isZero();
    assertThat(office.register().stops()).containsOnlyKeys("asset:EQ-0417", "card:" + POLYPS);
  }

  /** The rows of one slot, read again on a day; the limit of its yellow pedal is as given. */
  private void readBack(String limit, String day) throws IOException {
    String sheet = Files.readString(office.content(READINGS));
    String again =
        sheet
            .lines()
            .filter(row -> row.startsWith("EQ-0417,2026-11-04,3,"))
            .map(row -> row.replace("2026-11-04", day))
            .map(row -> row.contains(",yellow,") ? row.replaceFirst("\\d+ W", limit) : row)
            .collect(Collectors.joining("\n", "", "\n"));
    Files.writeString(office.content(READINGS), sheet + again);
  }

  @Test
  void programReadBackOtherwise_takesTheGeneratorDownUntilItIsReadRightAndLifted()
      throws Exception {
    readBack("64 W", "2026-11-22");
    assertThat(run("issue", "--on", "2026-11-22")).isEqualTo(4);
    assertThat(office.out)
        .contains(
            "take down: Room 2, EQ-0417", "out of use: slot 3 does not hold what is approved\n");
    for (String page : List.of("rooms/room-2.html", "assets/EQ-0417.html")) {
      assertThat(office.page(page)).contains("Out of use: Room 2, EQ-0417");
    }
    String code = card("room-2-eq-0417-set-up").code();
    assertThat(office.page("c/" + code + "/index.html"))
        .contains("Out of use. Take this card down")
        .doesNotContain("In use:", "until then");
    assertThat(decide("lift", "asset:EQ-0417", "medical-physics", "2026-11-23")).isEqualTo(1);
    assertThat(office.err).contains("first: slot 3 does not hold what is approved");
    readBack("60 W", "2026-11-23");
    assertThat(run("issue", "--on", "2026-11-23")).isZero();
    assertThat(office.out).contains("stays down: Room 2, EQ-0417");
    assertThat(decide("lift", "asset:EQ-0417", "medical-physics", "2026-11-24"))
        .as(office.told())
        .isZero();
    assertThat(run("issue", "--on", "2026-11-24")).as(office.told()).isZero();
    assertThat(office.out).contains("print these: Room 2, EQ-0417", "it is in use again");
  }

  @Test
  void unitThatOnlyWantsToBeWarned_keepsTheCardAndSaysSo() throws Exception {
    office.edit("unit.yaml", "program-differs: stop", "program-differs: warn");
    office.signAll("2026-11-22");
    readBack("64 W", "2026-11-23");
    assertThat(run("issue", "--on", "2026-11-23")).isEqualTo(4);
    assertThat(office.out).contains("stays up: Room 2, EQ-0417").doesNotContain("take down");
    String code = card("room-2-eq-0417-set-up").code();
    assertThat(office.page("c/" + code + "/index.html"))
        .contains("Ask before relying on this card.", "slot 3 does not hold what is approved")
        .doesNotContain("until then");
    String notice = "Ask before relying on the card Room 2, EQ-0417: ";
    String answer = "answers/room-2/cordgrass-flat-resection.html";
    for (String page : List.of("rooms/room-2.html", "assets/EQ-0417.html", answer)) {
      assertThat(office.page(page)).as(page).contains(notice);
    }
    assertThat(office.page("rooms/room-a.html")).doesNotContain("Ask before relying on");
    withdraw("asset:EQ-0209", "2026-11-23");
    assertThat(office.page("rooms/room-2.html")).contains(notice);
    assertThat(office.page("rooms/room-a.html")).contains("Out of use: Room A");
  }

  @Tag("thorough")
  @Test
  void quarantine_actsUnsignedAndEndsSigned() throws Exception {
    office.edit("assets.csv", "EQ-0418,cordgrass,2.3,in use", "EQ-0418,cordgrass,2.3,quarantined");
    assertThat(run("issue", "--on", "2026-11-22")).isEqualTo(1);
    assertThat(office.out)
        .contains("take down: Room 3, EQ-0418")
        .doesNotContain("down: Room 3, EQ-06");
    office.edit("assets.csv", "EQ-0418,cordgrass,2.3,quarantined", "EQ-0418,cordgrass,2.3,in use");
    run("issue", "--on", "2026-11-23");
    assertThat(office.out).contains("stays down: Room 3, EQ-0418");
    office.answering(
        "yes\n",
        "approve",
        "--role",
        "medical-physics",
        "--initials",
        "AP",
        "--only",
        "asset:EQ-0418",
        "--on",
        "2026-11-23");
    assertThat(office.out).contains("1 signed by medical-physics");
    assertThat(run("issue", "--on", "2026-11-23")).as(office.told()).isZero();
    assertThat(office.out).contains("print these: Room 3, EQ-0418");
  }

  // People sign.

  @Test
  void warningThatMayHurt_isOnTheSheetAndHoldsTheCardUntilItIsAnswered() throws Exception {
    office.edit("profiles/restharrow.yaml", "argon-flow: 0.8 L/min", "argon-flow: 8 L/min");
    run("approve", "--role", "lead-endoscopist", "--initials", "TO");
    assertThat(office.out)
        .contains("warning: profiles/restharrow.yaml:31", "until the content answers it");
    office.signAll("2026-11-22");
    assertThat(run("issue", "--on", "2026-11-22")).isEqualTo(4);
    assertThat(office.out).doesNotContain("print these").contains("profiles/restharrow.yaml:31");
  }

  @Test
  void nothingIsSignedThatRestsOnAnythingUnreadable() throws IOException {
    office.edit("machines/restharrow.yaml", "peak-voltage:", "peak-volt:");
    office.edit(ORACHE, LIMIT, LOWER);
    office.sign("lead-endoscopist", "2026-11-22");
    assertThat(office.out)
        .contains("0 signed by", "not shown because of errors in them, or in what they rest on");
  }

  @Test
  void sheetIsReadFirst_andNobodyIsNobody() throws IOException {
    changeLimit();
    String ledger = Files.readString(office.content(Ledger.FILE));
    String[] approve = {"approve", "--role", "lead-endoscopist", "--initials", "TO"};
    assertThat(office.answering(Environment.Audience.PIPE, "yes\n".repeat(99), approve)).isZero();
    assertThat(office.out)
        .contains(
            "Group 1 of 1: Orache, 1 thing", "limit: 40 W → 35 W", "cards that show it: Room A")
        .contains("0 signed by lead-endoscopist (TO), 1 left open");
    Matcher number = NUMBER.matcher(office.out);
    assertThat(number.find()).isTrue();
    for (String answers : List.of("", "no\n", "stop\n", "perhaps\nperhaps\nperhaps\nyes\n")) {
      office.answering(answers, approve);
      assertThat(office.out).as(answers).contains("0 signed by");
    }
    String[] other =
        Stream.concat(Stream.of(approve), Stream.of("--sheet", "0000-0000")).toArray(String[]::new);
    assertThat(office.answering(Environment.Audience.PIPE, "yes\n", other)).isEqualTo(2);
    assertThat(Files.readString(office.content(Ledger.FILE))).isEqualTo(ledger);
    String[] read =
        Stream.concat(Stream.of(approve), Stream.of("--sheet", number.group(1)))
            .toArray(String[]::new);
    office.answering(Environment.Audience.PIPE, "yes\n", read);
    assertThat(office.out).contains("1 signed by lead-endoscopist (TO), 0 left open");
  }

  @Test
  void onePersonInTwoRoles_needsTheUnitsLeave() throws IOException {
    changeLimit();
    String[] approve = {"approve", "--role", "lead-endoscopist", "--initials", "KM"};
    assertThat(office.answering("yes\n", approve)).isEqualTo(2);
    assertThat(office.err).contains("KM signed as lead-nurse already");
    assertThat(run("approve", "--format", "json")).isEqualTo(2);
    assertThat(office.out).startsWith("{").contains("\"exit\":2", "there is no option");
    assertThat(office.err).isEmpty();
  }

  @Test
  void mergeWithoutWhatWasKept_isRefused() throws IOException {
    Path other = temporary.resolve("other");
    Office.copy(office.folder, other);
    changeLimit();
    Office theirs = Office.at(other);
    theirs.edit(ORACHE, LIMIT, LOWER);
    theirs.sign("medical-physics", "2026-11-22");
    Files.copy(theirs.content(Ledger.FILE), office.folder.resolve("theirs.csv"));
    assertThat(run("approve", "--merge", "theirs.csv")).isEqualTo(2);
    assertThat(office.err).contains("bring the folder 'approved' along");
    assertThat(run("approve", "--merge", theirs.content(Ledger.FILE).toString()))
        .as(office.told())
        .isZero();
    office.sign("lead-endoscopist", "2026-11-23");
    assertThat(run("check")).as(office.told()).isZero();
  }

  @Test
  void registerIsWhatTheLedgerTells() throws Exception {
    withdraw("asset:EQ-0417", "2026-11-22");
    assertThat(Register.read(office.page(Register.FILE)).last(Deed.WITHDRAWAL)).isEqualTo(1);
    assertThat(Files.readString(office.content(Ledger.FILE)))
        .contains(",issue:1,", ",withdrawal:1," + office.register().head().orElseThrow());
  }
}
