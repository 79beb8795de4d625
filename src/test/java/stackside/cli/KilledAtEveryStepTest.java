package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.edition.Books;
import stackside.derive.edition.DamagedRegister;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.publish.HastyDisk;
import stackside.publish.OutputFolder;
import stackside.publish.RecordedDisk;

/**
 * Kills what changes the record at each single file operation, and in the midst of each write. The
 * next command must find the site as it was or as it was to be, and one issue goes on from there.
 */
@Tag("thorough")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class KilledAtEveryStepTest {
  private static final String WITHDRAW =
      "withdraw asset:EQ-1 --reason Smoke --role lead-nurse --initials EF";
  private static final String LIFT =
      "lift asset:EQ-1 --reason Mended --role medical-physics --initials CD";

  private final Map<Object, Fingerprint> looked = new HashMap<>();
  private Path base;
  private int kills;
  private int healed;

  @BeforeAll
  void makeAUnitThatHasIssuedOnceAndSignedAChange(@TempDir Path folder) throws IOException {
    base = folder;
    SmallOffice.issuedAndChanged(start());
    succeeds(start(), "approve", "--role", "lead-endoscopist", "--initials", "AB");
  }

  private Path start() {
    return base.resolve("start");
  }

  private static SmallOffice.Ended succeeds(Path folder, String... arguments) {
    SmallOffice.Ended ended = SmallOffice.run(folder, new HastyDisk(), arguments);
    assertThat(ended.code()).as(ended.told()).isZero();
    return ended;
  }

  @ParameterizedTest
  @CsvSource({"issue, issue", "withdraw, " + WITHDRAW, "lift, " + LIFT})
  void oneCommandHeals(String name, String command) throws IOException {
    Path before = base.resolve("before-" + name);
    SmallOffice.link(start(), before);
    if (name.equals("lift")) {
      succeeds(before, WITHDRAW.split(" "));
    }
    Path lived = base.resolve("lived-" + name);
    SmallOffice.link(before, lived);
    RecordedDisk disk = new RecordedDisk(lived);
    SmallOffice.Ended whole = SmallOffice.run(lived, disk, command.split(" "));
    assertThat(whole.code()).as(whole.told()).isZero();
    List<SortedMap<String, Fingerprint>> sites = List.of(site(before), site(lived));

    Path killed = base.resolve("killed-" + name);
    SmallOffice.link(before, killed);
    kills = 0;
    healed = 0;
    for (RecordedDisk.Step step : disk.steps()) {
      if (step.half().isPresent()) {
        Path half = base.resolve("half-" + name);
        SmallOffice.link(killed, half);
        step.half().get().in(half);
        isWholeAfter(half, "in the midst of " + step.name(), sites);
        SmallOffice.delete(half);
      }
      step.whole().in(killed);
      Path here = base.resolve("here-" + name);
      SmallOffice.link(killed, here);
      isWholeAfter(here, "after " + step.name(), sites);
      SmallOffice.delete(here);
    }
    System.out.printf(
        "%s: %d file operations, %d kills, %d went on with an issue, 0 losses%n",
        name, disk.steps().size(), kills, healed);
    assertThat(kills).isGreaterThan(disk.steps().size());
  }

  /** The files of the site; a file that was only linked since is not looked into again. */
  private SortedMap<String, Fingerprint> site(Path folder) throws IOException {
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    Path site = folder.resolve("site");
    try (Stream<Path> walk = Files.walk(site)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
        Object same = List.of(is.fileKey(), is.lastModifiedTime(), is.size());
        Fingerprint print = looked.get(same);
        if (print == null) {
          print = Fingerprint.of(Files.readAllBytes(file));
          looked.put(same, print);
        }
        files.put(site.relativize(file).toString(), print);
      }
    }
    return files;
  }

  private void isWholeAfter(Path here, String kill, List<SortedMap<String, Fingerprint>> sites)
      throws IOException {
    kills++;
    try (OutputFolder folder = OutputFolder.hold(new HastyDisk(), here.resolve("site"))) {
      assertThat(folder.files()).as(kill).isNotEmpty();
    }
    assertThat(site(here)).as(kill).isIn(sites);
    Books books = books(here);
    assertThat(books.problems()).as(kill).isEmpty();
    if (!books.adopted().equals(books) || books.match() == Books.Match.ISSUE_LOST) {
      healed++;
      SmallOffice.Ended issued = SmallOffice.run(here, new HastyDisk(), "issue");
      assertThat(issued.code()).as(kill + issued.told()).isIn(0, 4);
      books = books(here);
    }
    assertThat(books.match()).as(kill).isEqualTo(Books.Match.IN_STEP);
    assertThat(books.adopted()).as(kill).isEqualTo(books);
    assertThat(books.ledger().acts())
        .as(kill)
        .extracting(act -> act.deed() + " " + act.number())
        .doesNotHaveDuplicates();
  }

  private static Books books(Path here) throws IOException {
    try {
      ApprovalFiles.Read read = ApprovalFiles.in(new HastyDisk(), here.resolve("content")).read();
      assertThat(read.problems()).isEmpty();
      return new Books(
          read.approvals(),
          Register.read(Files.readString(here.resolve("site").resolve(Register.FILE))));
    } catch (DamagedRegister e) {
      throw new AssertionError(e);
    }
  }
}
