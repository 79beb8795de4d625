package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.publish.LocalDisk;
import stackside.publish.OutputFolder;
import stackside.render.OutputFile;

/**
 * The way of a card from signature to wall and down again, on the demonstration unit: sign, issue,
 * change, sign again, issue again, withdraw.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ControlledDocumentsTest {

  private static final String BEFORE = "Rinse the cut with water and look at its edge.";
  private static final String AFTER = "Rinse the cut with water, then look at its edge.";
  private static final Path PROFILES = Path.of("content", "profiles", "samphire.yaml");

  private Path signedOnce;
  private Path folder;
  private String out = "";
  private String err = "";

  @BeforeAll
  void signAndIssueOnce(@TempDir Path base) throws IOException {
    signedOnce = base.resolve("once");
    folder = signedOnce;
    Files.createDirectories(folder);
    copy(Path.of("content"), folder.resolve("content"));
    Files.deleteIfExists(folder.resolve("content").resolve(Ledger.FILE));
    signAll("2026-11-20");
    assertThat(run("", "issue", "--first", "--on", "2026-11-21")).as(err + out).isZero();
  }

  @BeforeEach
  void startFromTheFirstIssue(@TempDir Path own) throws IOException {
    folder = own.resolve("unit");
    copy(signedOnce, folder);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> walk = Files.walk(from)) {
      for (Path path : walk.toList()) {
        Files.copy(path, to.resolve(from.relativize(path).toString()));
      }
    }
  }

  private int run(String answers, String... arguments) {
    ByteArrayOutputStream results = new ByteArrayOutputStream();
    ByteArrayOutputStream problems = new ByteArrayOutputStream();
    Surroundings surroundings =
        new Surroundings(
            folder,
            () -> LocalDate.of(2026, 11, 30),
            new LocalDisk(),
            Surroundings.Audience.PIPE,
            new ByteArrayInputStream(answers.getBytes(UTF_8)));
    int code = new Cli(results, problems, surroundings).run(arguments);
    out = results.toString(UTF_8);
    err = problems.toString(UTF_8);
    return code;
  }

  private void signAll(String day) {
    for (String role : List.of("lead-nurse", "lead-endoscopist", "medical-physics")) {
      run("yes\n".repeat(500), "approve", "--role", role, "--initials", "AB", "--on", day);
    }
  }

  private Register register() throws Exception {
    return Register.read(Files.readString(folder.resolve("site").resolve(Register.FILE)));
  }

  private void changeOneProfile() throws IOException {
    Path file = folder.resolve(PROFILES);
    String text = Files.readString(file);
    assertThat(text).contains(BEFORE);
    Files.writeString(file, text.replaceFirst(BEFORE, AFTER));
  }

  private static SortedMap<String, Fingerprint> bytes(Path root) throws IOException {
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(root)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Fingerprint.of(Files.readAllBytes(file)));
      }
    }
    return files;
  }

  @Test
  void firstIssueIsWhole() throws Exception {
    assertThat(register().entries()).hasSize(1);
    assertThat(register().cards().values())
        .isNotEmpty()
        .allMatch(CardEntry::current)
        .allMatch(card -> card.edition() == 1)
        .allMatch(card -> Files.exists(folder.resolve("site").resolve(card.path())))
        .allMatch(card -> Files.exists(folder.resolve("site/c").resolve(card.code())));
    assertThat(folder.resolve("site/changes.html")).exists();
  }

  @Test
  void changedProfile_isNamedFieldByField() throws IOException {
    changeOneProfile();
    assertThat(run("", "check")).isZero();
    assertThat(out)
        .contains("changed since it was signed, and not signed again by lead-endoscopist")
        .contains("technique: " + BEFORE + " → " + AFTER + " (signed 2026-11-20 by ");
  }

  @Test
  void unsignedChange_staysOffEveryWallAndPage() throws Exception {
    SortedMap<String, Fingerprint> cards = bytes(folder.resolve("site/cards"));
    changeOneProfile();
    assertThat(run("", "issue", "--on", "2026-11-22")).isEqualTo(1);
    assertThat(bytes(folder.resolve("site/cards"))).isEqualTo(cards);
    assertThat(out).contains("stays up: ").doesNotContain("print these");
    assertThat(register().last().orElseThrow().cards()).isEmpty();
    for (Path page : pages()) {
      assertThat(Files.readString(page)).as(page.toString()).doesNotContain(AFTER);
    }
  }

  private List<Path> pages() throws IOException {
    try (Stream<Path> walk = Files.walk(folder.resolve("site"))) {
      return walk.filter(file -> file.toString().endsWith(".html")).toList();
    }
  }

  @Test
  void lastIssueIsRebuiltFromItsRegister() throws Exception {
    changeOneProfile();
    signAll("2026-11-22");
    run("", "issue", "--on", "2026-11-23");
    Register register = register();
    try (OutputFolder empty = OutputFolder.hold(new LocalDisk(), folder.resolve("again"))) {
      empty.replace(List.of(OutputFile.text(Register.FILE, register.before().text())));
    }
    run("", "issue", "--on", "2026-11-23", "--out", "again");
    assertThat(bytes(folder.resolve("again"))).isEqualTo(bytes(folder.resolve("site")));
  }

  @Test
  void issueWithoutAChange_leavesEveryCardUntouched() throws Exception {
    SortedMap<String, Fingerprint> cards = bytes(folder.resolve("site/cards"));
    assertThat(run("", "issue", "--on", "2026-11-25")).as(out).isZero();
    assertThat(bytes(folder.resolve("site/cards"))).isEqualTo(cards);
    assertThat(out).doesNotContain("print these", "take down");
    assertThat(register().entries()).hasSize(2);
    assertThat(register().last().orElseThrow().cards()).isEmpty();
  }

  @Test
  void withdrawal_takesDownAtOnceAndOnlyAnIssueBringsBack() throws Exception {
    CardEntry card = register().cards().values().iterator().next();
    Files.writeString(folder.resolve(PROFILES), "profiles: [broken");
    assertThat(withdraw(card.code())).as(err).isZero();
    assertThat(out).startsWith("take down: " + card.title() + ", edition 1");
    assertThat(folder.resolve("site").resolve(card.path())).doesNotExist();
    assertThat(Files.readString(folder.resolve("site/c/" + card.code() + "/index.html")))
        .contains("out of use", "Smoke (NN)");
    assertThat(register().last().orElseThrow().by()).isEqualTo(Optional.of("lead-nurse"));

    Files.copy(
        signedOnce.resolve(PROFILES),
        folder.resolve(PROFILES),
        StandardCopyOption.REPLACE_EXISTING);
    run("", "issue", "--on", "2026-11-24");
    assertThat(register().card(card.name()).orElseThrow().edition()).isEqualTo(2);
    assertThat(out).contains("print these: " + card.title() + ", edition 2");
  }

  private int withdraw(String card) {
    return run(
        "",
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
    assertThat(err).contains("no card in use is 'zzzzz'");
  }

  @Test
  void lostRegister_isNamedAndNotBegunAnew() throws IOException {
    Files.delete(folder.resolve("site").resolve(Register.FILE));
    assertThat(run("", "issue")).isEqualTo(2);
    assertThat(err).contains("there is no register of earlier issues in site");
    assertThat(run("", "issue", "--first")).isEqualTo(2);
    assertThat(err).contains("holds an issue already");
  }

  @Test
  void damagedRegister_isNamedAndNotBegunAnew() throws IOException {
    Path register = folder.resolve("site").resolve(Register.FILE);
    Files.writeString(
        register, Files.readString(register).replace("\"edition\":1", "\"edition\":0"));
    assertThat(run("", "issue")).isEqualTo(2);
    assertThat(err).contains("cannot be trusted", "seal does not fit");
  }

  @Test
  void ledgerThatWasCutOff_issuesNothing() throws IOException {
    Path ledger = folder.resolve("content").resolve(Ledger.FILE);
    List<String> lines = new ArrayList<>(Files.readAllLines(ledger));
    lines.remove(lines.size() - 1);
    Files.writeString(ledger, String.join("\n", lines) + "\n");
    SortedMap<String, Fingerprint> site = bytes(folder.resolve("site"));
    assertThat(run("", "issue")).isEqualTo(1);
    assertThat(err).contains("[ledger-shortened]");
    assertThat(bytes(folder.resolve("site"))).isEqualTo(site);
  }

  @Test
  void copyOfWhatWasSigned_isMissedWhenGoneOrTouched() throws IOException {
    try (Stream<Path> kept = Files.list(folder.resolve("content/approved"))) {
      Path copy =
          kept.filter(f -> f.toString().endsWith(".json")).sorted().findFirst().orElseThrow();
      Files.writeString(copy, Files.readString(copy).replaceFirst("\"name\"", "\"nume\""));
    }
    assertThat(run("", "check")).isEqualTo(1);
    assertThat(err).contains("[fingerprint-unknown]");
  }

  @Test
  void nothingIsSignedThatWasNotShown() throws IOException {
    changeOneProfile();
    String ledger = Files.readString(folder.resolve("content").resolve(Ledger.FILE));
    run("", "approve", "--role", "lead-endoscopist", "--initials", "AB");
    assertThat(out).contains("0 signed by lead-endoscopist (AB), 1 left open");
    run("no\n", "approve", "--role", "lead-endoscopist", "--initials", "AB");
    assertThat(Files.readString(folder.resolve("content").resolve(Ledger.FILE))).isEqualTo(ledger);
    run("perhaps\nyes\n", "approve", "--role", "lead-endoscopist", "--initials", "AB");
    assertThat(out).contains("technique: " + BEFORE + " → " + AFTER).contains("1 signed");
  }
}
