package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Ledger;
import stackside.publish.LocalDisk;
import stackside.publish.OutputFolder;
import stackside.render.OutputFile;

/**
 * The site folder of this repository is what its content and its register make, byte for byte: the
 * last issue is made anew into an empty folder, from the content, the day of that issue and the
 * register without it. With {@code -Dsite=write} the pages and cards are written anew, as long as
 * the register stays what it is; with {@code -Dsite=anew} the whole record of the demonstration is,
 * signatures and register too, by living through {@link DemonstrationHistory} again.
 */
final class IssuedSiteTest {
  private static final Path SITE = Path.of("site");
  private static final Path CONTENT = Path.of("content");
  private static final int NAMED = 8;

  private static final String LOOK =
      "The register is as it was issued, so the cards say what they said and only pages, drawings"
          + " or words that nobody signs are different. Look at the difference in target/draft,"
          + " then write site/ anew with\n\n"
          + "    mvn -q test -Dtest=IssuedSiteTest -Dsite=write\n\nand commit it.";
  private static final String CONTENTS =
      "What cards say, or the ledger, is not as it was issued. See what is not signed with\n\n"
          + "    mvn -q compile exec:java -Dexec.args=check\n\n"
          + "sign it as each role that is named there (lead-nurse KM, lead-endoscopist TO,"
          + " medical-physics AP), after reading it, with\n\n"
          + "    mvn -q compile exec:java -Dexec.args='approve --role ROLE --initials INITIALS'\n\n"
          + "then issue with\n\n"
          + "    mvn -q compile exec:java -Dexec.args=issue\n\n"
          + "and commit content/ and site/ together; or make the whole record anew with\n\n"
          + "    mvn -q test -Dtest=IssuedSiteTest -Dsite=anew";

  @TempDir private Path temporary;

  @BeforeAll
  static void makeTheRecordAnew(@TempDir Path folder) throws IOException {
    if ("anew".equals(System.getProperty("site"))) {
      DemonstrationHistory.makeAnew(folder);
    }
  }

  private static SortedMap<String, OutputFile> files(Path folder) throws IOException {
    try (OutputFolder held = OutputFolder.hold(new LocalDisk(), folder)) {
      return held.files();
    }
  }

  private static Register register(SortedMap<String, OutputFile> files) throws Exception {
    return Register.read(new String(files.get(Register.FILE).bytes(), UTF_8));
  }

  /**
   * The last issue, made anew in a folder of its own; cards that stayed at an earlier edition come
   * from where they are.
   */
  private Path madeAnew(SortedMap<String, OutputFile> site) throws Exception {
    Register register = register(site);
    Path again = temporary.resolve("again");
    Office.copy(CONTENT, again.resolve("content"));
    Path ledger = again.resolve("content").resolve(Ledger.FILE);
    List<String> lines = Files.readAllLines(ledger);
    lines.removeIf(line -> line.contains(",issue:" + register.last(Deed.ISSUE) + ","));
    Files.writeString(ledger, String.join("\n", lines) + "\n");
    List<OutputFile> before = new ArrayList<>();
    before.add(OutputFile.text(Register.FILE, register.before().text()));
    register.before().cards().values().stream()
        .filter(CardEntry::current)
        .flatMap(card -> site.values().stream().filter(file -> file.path().equals(card.path())))
        .forEach(before::add);
    try (OutputFolder empty = OutputFolder.hold(new LocalDisk(), again.resolve("site"))) {
      empty.replace(before);
    }
    LocalDate on = register.last().orElseThrow().on();
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    Environment surroundings =
        new Environment(
            again,
            () -> on,
            new LocalDisk(),
            Environment.Audience.PIPE,
            InputStream.nullInputStream());
    int code = new Cli(told, told, surroundings).run("issue");
    if (files(again.resolve("site")).size() <= before.size()) {
      fail("site/ cannot be made anew (exit %d).\n%s\n%s", code, told.toString(UTF_8), CONTENTS);
    }
    return again;
  }

  @Test
  void siteIsWhatContentAndBooksMake() throws Exception {
    SortedMap<String, OutputFile> site = files(SITE);
    assertThat(site).as("the folder site/").isNotEmpty();
    Path folder = madeAnew(site);
    SortedMap<String, OutputFile> again = files(folder.resolve("site"));
    boolean sameCards = register(again).cards().equals(register(site).cards());
    if (sameCards && "write".equals(System.getProperty("site"))) {
      DemonstrationHistory.putInPlace(folder);
      site = files(SITE);
    }
    List<String> different = different(site, again);
    if (!different.isEmpty()) {
      fail(
          "site/ is not what content/ and its register make: %d of %d files differ, such as %s.\n%s",
          different.size(),
          site.size(),
          different.subList(0, Math.min(NAMED, different.size())),
          sameCards ? LOOK : CONTENTS);
    }
  }

  private static List<String> different(
      SortedMap<String, OutputFile> one, SortedMap<String, OutputFile> other) {
    TreeSet<String> paths = new TreeSet<>(one.keySet());
    paths.addAll(other.keySet());
    return paths.stream().filter(path -> !sameFile(path, one, other)).toList();
  }

  private static boolean sameFile(
      String path, SortedMap<String, OutputFile> one, SortedMap<String, OutputFile> other) {
    OutputFile first = one.get(path);
    return first != null && first.equals(other.get(path));
  }

  @Test
  void historyHoldsIssuesAWithdrawalAndItsLifting() throws Exception {
    Register register = register(files(SITE));
    assertThat(register.last(Deed.ISSUE)).isGreaterThan(2);
    assertThat(register.last(Deed.WITHDRAWAL)).isPositive();
    assertThat(register.last(Deed.LIFTING)).isPositive();
    assertThat(register.last().map(RegisterEntry::deed)).contains(Deed.ISSUE);
    assertThat(register.cards().values()).anyMatch(card -> card.edition() > 1);
  }
}
