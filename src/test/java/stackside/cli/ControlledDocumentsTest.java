package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;

/**
 * The way of a card from signature to wall and down again, on the demonstration unit: sign, issue,
 * change, sign again, issue again, withdraw.
 */
final class ControlledDocumentsTest {

  private static final String BEFORE = "Rinse the cut with water and look at its edge.";
  private static final String AFTER = "Rinse the cut with water, then look at its edge.";
  private static final String ORACHE = "profiles/orache.yaml";
  private static final String LIMIT = "{mode: blend, limit: 40 W}";
  private static final String LOWER = "{mode: blend, limit: 35 W}";

  @TempDir private Path temporary;
  private Office office;

  @BeforeEach
  void startFromTheFirstIssue() throws IOException {
    office = Office.issued(temporary.resolve("unit"));
  }

  private int run(String... arguments) {
    return office.run(arguments);
  }

  private void changeOneProfile() throws IOException {
    office.edit(ORACHE, BEFORE, AFTER);
  }

  @Test
  void firstIssueIsWhole() throws Exception {
    assertThat(office.register().entries()).hasSize(1);
    assertThat(office.register().cards().values())
        .isNotEmpty()
        .allMatch(CardEntry::current)
        .allMatch(card -> card.edition() == 1)
        .allMatch(card -> Files.exists(office.folder.resolve("site").resolve(card.path())))
        .allMatch(card -> Files.exists(office.folder.resolve("site/c").resolve(card.code())));
    assertThat(office.folder.resolve("site/changes.html")).exists();
  }

  @Test
  void changedProfile_isNamedFieldByField() throws IOException {
    changeOneProfile();
    assertThat(run("check")).isEqualTo(4);
    assertThat(office.out)
        .contains("changed since it was signed, and not signed again by lead-endoscopist")
        .contains("technique: " + BEFORE + " → " + AFTER + " (signed 2026-11-20 by ");
  }

  @Test
  void unsignedChange_staysOffEveryWallAndPage() throws Exception {
    SortedMap<String, Fingerprint> cards = office.bytes("site/cards");
    changeOneProfile();
    assertThat(run("issue", "--on", "2026-11-22")).isEqualTo(4);
    assertThat(office.bytes("site/cards")).isEqualTo(cards);
    assertThat(office.out).contains("stays up: ").doesNotContain("print these");
    assertThat(office.register().last().orElseThrow().cards()).isEmpty();
    for (Path page : pages()) {
      assertThat(Files.readString(page)).as(page.toString()).doesNotContain(AFTER);
    }
  }

  private List<Path> pages() throws IOException {
    try (Stream<Path> walk = Files.walk(office.folder.resolve("site"))) {
      return walk.filter(file -> file.toString().endsWith(".html")).toList();
    }
  }

  @Tag("thorough")
  @Test
  void sameBooksAndContent_makeTheSameIssue() throws Exception {
    changeOneProfile();
    office.signAll("2026-11-22");
    Office.copy(office.folder, temporary.resolve("again"));
    run("issue", "--on", "2026-11-23");
    SortedMap<String, Fingerprint> site = office.bytes("site");
    SortedMap<String, Fingerprint> content = office.bytes("content");
    Office again = Office.at(temporary.resolve("again"));
    again.run("issue", "--on", "2026-11-23");
    assertThat(again.bytes("site")).isEqualTo(site);
    assertThat(again.bytes("content")).isEqualTo(content);
  }

  @Test
  void issueWithoutAChange_writesNothing() throws Exception {
    SortedMap<String, Fingerprint> site = office.bytes("site");
    Path card = office.site("cards/room-2-eq-0417-set-up.pdf");
    Object before = Files.readAttributes(card, BasicFileAttributes.class).fileKey();
    assertThat(run("issue", "--on", "2026-11-25")).as(office.out).isZero();
    assertThat(office.bytes("site")).isEqualTo(site);
    assertThat(Files.readAttributes(card, BasicFileAttributes.class).fileKey()).isEqualTo(before);
    assertThat(office.out)
        .contains("nothing has changed since issue 1 of 2026-11-21; nothing was written")
        .doesNotContain("print these", "take down");
  }

  @Test
  void issueOfAChangedPage_isRememberedThoughNoCardChanged() throws Exception {
    SortedMap<String, Fingerprint> cards = office.bytes("site/cards");
    Files.createDirectory(office.content("handbook"));
    Files.writeString(
        office.content("handbook/handover.md"), "# Handover\n\nTell the next team.\n");
    assertThat(run("issue", "--on", "2026-11-25")).as(office.out).isZero();
    assertThat(office.bytes("site/cards")).isEqualTo(cards);
    assertThat(office.out).doesNotContain("nothing has changed");
    assertThat(office.register().entries()).hasSize(2);
    assertThat(office.register().last().orElseThrow().cards()).isEmpty();
  }

  private void sign(String role) {
    office.sign(role, "2026-11-22");
  }

  @Test
  void aRoleTakenOut_signsNoLessUntilAllAndItselfHaveAgreed() throws Exception {
    String two = "profile: [lead-endoscopist, medical-physics]";
    office.edit("unit.yaml", two, "profile: [lead-endoscopist]");
    assertThat(run("check")).isEqualTo(4);
    assertThat(office.out)
        .contains("unit:policies: signatures profile: lead-endoscopist, medical-physics → lead");
    for (String role : List.of("lead-nurse", "lead-endoscopist")) {
      sign(role);
    }
    changeOneProfile();
    sign("lead-endoscopist");
    assertThat(run("issue", "--on", "2026-11-23")).isEqualTo(4);
    assertThat(office.out)
        .contains("unit:policies: changed since it was signed, and not signed again by medical")
        .doesNotContain("print these");
    office.signAll("2026-11-23");
    assertThat(run("check")).as(office.told()).isZero();
  }

  @Tag("thorough")
  @Test
  void aRoleTakenOutOfEveryList_stillHasToAgree() throws IOException {
    office.edit(
        "unit.yaml", "profile: [lead-endoscopist, medical-physics]", "profile: [lead-nurse]");
    office.edit("unit.yaml", "machine: [medical-physics]", "machine: [lead-nurse]");
    office.edit("unit.yaml", "asset: [medical-physics]", "asset: [lead-nurse]");
    for (String role : List.of("lead-nurse", "lead-endoscopist")) {
      sign(role);
    }
    assertThat(run("issue", "--on", "2026-11-23")).isEqualTo(4);
    assertThat(office.out)
        .contains("unit:policies: changed since it was signed, and not signed again by medical")
        .doesNotContain("print these");
    office.sign("medical-physics", "2026-11-23");
    office.sign("lead-nurse", "2026-11-23");
    assertThat(run("issue", "--on", "2026-11-24")).as(office.told()).isZero();
  }

  @Test
  void withdrawal_takesDownAtOnceAndStandsUntilItIsLifted() throws Exception {
    CardEntry card = office.register().cards().values().iterator().next();
    Files.writeString(office.content(ORACHE), "profiles: [broken");
    assertThat(withdraw(card.code())).as(office.err).isZero();
    assertThat(office.out).startsWith("take down: " + card.title() + ", edition 1");
    assertThat(office.folder.resolve("site").resolve(card.path())).doesNotExist();
    assertThat(Files.readString(office.folder.resolve("site/c/" + card.code() + "/index.html")))
        .contains("out of use", "Smoke (NN)");
    assertThat(office.register().last().orElseThrow().by()).isEqualTo(Optional.of("lead-nurse"));

    Files.copy(
        Path.of("content").resolve(ORACHE),
        office.content(ORACHE),
        StandardCopyOption.REPLACE_EXISTING);
    run("issue", "--on", "2026-11-24");
    assertThat(office.register().card(card.name()).orElseThrow().current()).isFalse();
    assertThat(office.out).contains("stays down: " + card.title());
    assertThat(lift(card.code(), "lead-nurse")).isEqualTo(2);
    assertThat(office.err).contains("this unit leaves that to 'medical-physics'");
    assertThat(lift(card.code(), "medical-physics")).as(office.told()).isZero();
    run("issue", "--on", "2026-11-25");
    assertThat(office.register().card(card.name()).orElseThrow().edition()).isEqualTo(2);
    assertThat(office.out).contains("print these: " + card.title() + ", edition 2");
    assertThat(office.page("changes.html"))
        .contains("Withdrawal 1", "Lifting 1", "Lamp renewed (AP)");
  }

  private int lift(String what, String role) {
    return run(
        "lift",
        what,
        "--reason",
        "Lamp renewed",
        "--role",
        role,
        "--initials",
        Office.initials(role),
        "--on",
        "2026-11-24");
  }

  private int withdraw(String card) {
    return run(
        "withdraw",
        card,
        "--reason",
        "Smoke",
        "--role",
        "lead-nurse",
        "--initials",
        "NN",
        "--on",
        "2026-11-23");
  }

  @Test
  void withdrawingWhatNobodyKnows_isWrongUsage() {
    assertThat(withdraw("zzzzz")).isEqualTo(2);
    assertThat(office.err).contains("no card in use is 'zzzzz'");
  }

  @Test
  void lostRegister_isNamedAndNotBegunAnew() throws IOException {
    Files.delete(office.folder.resolve("site").resolve(Register.FILE));
    assertThat(run("issue")).isEqualTo(2);
    assertThat(office.err).contains("there is no register of earlier issues in site");
    assertThat(run("issue", "--first")).isEqualTo(2);
    assertThat(office.err).contains("holds an issue already");
  }

  @Test
  void damagedRegister_isNamedAndNotBegunAnew() throws IOException {
    Path register = office.folder.resolve("site").resolve(Register.FILE);
    Files.writeString(
        register, Files.readString(register).replace("\"edition\":1", "\"edition\":0"));
    assertThat(run("issue")).isEqualTo(2);
    assertThat(office.err).contains("cannot be trusted", "seal does not fit");
  }

  @Test
  void ledgerThatWasCutOff_issuesNothing() throws IOException {
    Path ledger = office.folder.resolve("content").resolve(Ledger.FILE);
    List<String> lines = new ArrayList<>(Files.readAllLines(ledger));
    lines.remove(lines.size() - 1);
    Files.writeString(ledger, String.join("\n", lines) + "\n");
    SortedMap<String, Fingerprint> site = office.bytes("site");
    assertThat(run("issue")).isEqualTo(1);
    assertThat(office.err).contains("[ledger-shortened]");
    assertThat(office.bytes("site")).isEqualTo(site);
  }

  @Test
  void damagedLines_areNamedOnceAndNothingIsCalledUnsignedForThem() throws IOException {
    Path ledger = office.content(Ledger.FILE);
    Files.writeString(ledger, Files.readString(ledger).replace(",KM,", ",K M,"));
    assertThat(run("check")).isEqualTo(1);
    assertThat(office.err)
        .containsOnlyOnce("[ledger-altered]")
        .containsPattern("this is no line of a ledger; the same is true of [0-9]+ more lines")
        .contains("not judged until approvals.csv is as it was signed: signatures under");
    assertThat(office.out).doesNotContain("not signed");
  }

  @Test
  void copyOfWhatWasSigned_isMissedWhenGoneOrTouched() throws IOException {
    try (Stream<Path> kept = Files.list(office.folder.resolve("content/approved"))) {
      Path copy =
          kept.filter(f -> f.toString().endsWith(".json")).sorted().findFirst().orElseThrow();
      Files.writeString(copy, Files.readString(copy).replaceFirst("\"name\"", "\"nume\""));
    }
    assertThat(run("check")).isEqualTo(1);
    assertThat(office.err).contains("[fingerprint-unknown]");
  }

  // Three things can happen to a card whose content is signed.

  @Test
  void changedContent_isTheNextWholeEditionToBePrinted() throws Exception {
    office.edit(ORACHE, LIMIT, LOWER);
    office.signAll("2026-11-22");
    assertThat(run("issue", "--on", "2026-11-23")).as(office.told()).isZero();
    assertThat(office.out.lines())
        .containsOnlyOnce(
            "print these: Room A, EQ-0209: Settings, flat polyps, edition 2, 1 copy of"
                + " cards/room-a-eq-0209-settings-flat-polyps.pdf:"
                + " profile:orache-flat-resection, settings yellow limit: 40 W → 35 W",
            "take down: Room A, EQ-0209: Settings, flat polyps, edition 1 of 2026-11-21, 1 copy,"
                + " replaced: profile:orache-flat-resection, settings yellow limit: 40 W → 35 W");
    assertThat(office.out.lines().filter(line -> line.startsWith("print these"))).hasSize(1);
  }

  @Test
  void aFileThatIsNotAsItWasIssued_isNamedAndMadeRight() throws Exception {
    CardEntry card = office.register().card("room-2-eq-0417-set-up").orElseThrow();
    SortedMap<String, Fingerprint> cards = office.bytes("site/cards");
    Files.writeString(office.site(card.path()), "as it was drawn before");
    Files.writeString(office.site("index.html"), "somebody's own page");
    assertThat(run("issue", "--on", "2026-11-25")).as(office.told()).isZero();
    assertThat(office.out)
        .contains(
            "the file " + card.path() + " was not as it was issued; it was made right",
            "the file index.html was not as it was issued; it was made right")
        .doesNotContain("print these", "take down");
    assertThat(office.bytes("site/cards")).isEqualTo(cards);
    assertThat(office.register().card(card.name())).contains(card);
  }

  @Test
  void copiesAreNumberedFromTheRoom() throws Exception {
    assertThat(office.page("cards.html")).contains("copy 1 of 2, copy 2 of 2", "copy 1 of 1");
    assertThat(text(office.site("cards/room-2-eq-0417-set-up.pdf"))).contains("of 2.");
    assertThat(text(office.site("cards/room-a-eq-0209-set-up.pdf"))).contains("of 1.");
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
    }
  }

  @Test
  void registerOfAnotherFormat_isNamedAndNotBegunAnew() throws IOException {
    Path register = office.site(Register.FILE);
    Files.writeString(register, Files.readString(register).replace("\"format\":2", "\"format\":1"));
    assertThat(run("issue")).isEqualTo(2);
    assertThat(office.err).contains("format that this version does not know");
    assertThat(withdraw("room-2-eq-0417-set-up")).isEqualTo(2);
    assertThat(office.err).contains("format that this version does not know");
  }

  @Test
  void oneRoomsTrouble_doesNotHoldUpAnothersCorrection() throws Exception {
    office.edit("rooms/room-2.yaml", "copies: 2", "copies: 3");
    office.edit(ORACHE, LIMIT, LOWER);
    office.sign("lead-endoscopist", "2026-11-23");
    office.sign("medical-physics", "2026-11-23");
    assertThat(run("issue")).isEqualTo(4);
    assertThat(office.out)
        .contains("print these: Room A, EQ-0209: Settings, flat polyps, edition 2")
        .contains("stays up: Room 2, EQ-0417: Set up, and when it fails, edition 1")
        .contains("room:room-2: changed since it was signed, and not signed again by lead-nurse");
  }

  // Withdrawing at night.

  @Test
  void withdrawalNeedsNothingButTheSite() throws Exception {
    try (Stream<Path> walk = Files.walk(office.folder.resolve("content"))) {
      for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
    assertThat(withdraw("asset:EQ-0417")).as(office.told()).isZero();
    assertThat(office.out.lines().filter(line -> line.startsWith("take down: Room 2"))).hasSize(5);
    assertThat(office.page("cards.html")).contains("out of use", "12 cards in use");
    assertThat(office.page("changes.html")).contains("Withdrawal 1", "Lead nurse");
    assertThat(office.site("cards/room-2-eq-0417-set-up.pdf")).doesNotExist();
    for (String page : List.of("assets/EQ-0417.html", "rooms/room-2.html")) {
      assertThat(office.page(page))
          .contains("Out of use: Room 2, EQ-0417: Set up, and when it fails.", "Smoke (NN)");
    }
    assertThat(office.page("rooms/room-3.html")).doesNotContain("Out of use: Room");
  }

  @Test
  void withdrawalInARoleThatTheUnitLacks_changesNothing() throws Exception {
    SortedMap<String, Fingerprint> site = office.bytes("site");
    assertThat(
            run(
                "withdraw",
                "asset:EQ-0417",
                "--reason",
                "Smoke",
                "--role",
                "porter",
                "--initials",
                "NN"))
        .isEqualTo(2);
    assertThat(office.err).contains("there is no role 'porter'; unit.yaml has 'lead-nurse'");
    assertThat(office.bytes("site")).isEqualTo(site);
  }

  @Test
  void withdrawnCardOfUnsignedContent_staysDownAndMarked() throws Exception {
    withdraw("room-a-eq-0209-settings-flat-polyps");
    office.edit(ORACHE, LIMIT, LOWER);
    assertThat(run("issue")).as(office.told()).isZero();
    assertThat(
            office.register().card("room-a-eq-0209-settings-flat-polyps").orElseThrow().current())
        .isFalse();
    assertThat(office.page("rooms/room-a.html"))
        .containsOnlyOnce("Out of use: Room A, EQ-0209: Settings, flat polyps.");
  }

  // Two people who sign at the same time.

  @Test
  void twoLedgers_areMergedInOrderAndSealedAnew() throws Exception {
    office.edit(ORACHE, LIMIT, LOWER);
    Path ledger = office.content(Ledger.FILE);
    Path theirs = office.folder.resolve("theirs.csv");
    byte[] common = Files.readAllBytes(ledger);
    sign("medical-physics", "CD");
    Files.move(ledger, theirs);
    Files.write(ledger, common);
    sign("lead-endoscopist", "AB");
    assertThat(run("approve", "--merge", "theirs.csv")).as(office.told()).isZero();
    assertThat(office.out).contains("1 line added from theirs.csv");
    assertThat(run("check")).as(office.told()).isZero();
  }

  private void sign(String role, String initials) {
    office.answering("yes\n".repeat(9), "approve", "--role", role, "--initials", initials);
    assertThat(office.out).contains("1 signed by " + role);
  }

  @Test
  void ledgerWithAForeignLine_isNotMerged() throws IOException {
    Path theirs = office.folder.resolve("theirs.csv");
    String ledger = Files.readString(office.content(Ledger.FILE));
    Files.writeString(theirs, ledger.replaceFirst(",KM,", ",XY,"));
    assertThat(run("approve", "--merge", "theirs.csv")).isEqualTo(1);
    assertThat(office.err).contains("theirs.csv:", "[ledger-altered]");
    assertThat(Files.readString(office.content(Ledger.FILE))).isEqualTo(ledger);
  }

  @Test
  void everyLineOfTheLedgerTakenOut_issuesNothing() throws IOException {
    Path ledger = office.content(Ledger.FILE);
    List<String> lines = Files.readAllLines(ledger);
    for (int line : List.of(0, 1, lines.size() / 2, lines.size() - 2, lines.size() - 1)) {
      List<String> fewer = new ArrayList<>(lines);
      fewer.remove(line);
      Files.writeString(ledger, String.join("\n", fewer) + "\n");
      assertThat(run("issue")).as("without line %d", line + 1).isEqualTo(1);
      assertThat(office.out).contains("nothing was issued");
      assertThat(office.err).contains("[ledger-");
    }
  }
}
