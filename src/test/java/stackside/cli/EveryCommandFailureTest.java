package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.derive.edition.Books;
import stackside.derive.edition.DamagedRegister;
import stackside.derive.edition.Register;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.publish.Disk;
import stackside.publish.FailingDisk;
import stackside.publish.FailingDisk.Moment;
import stackside.publish.FailingDisk.Then;
import stackside.publish.LocalDisk;
import stackside.publish.OutputFolder;

/**
 * Makes the file operations of every command that writes fail, before, halfway and after, on a disk
 * that works again and on one that stays dead, and looks for what was lost. The many operations
 * that differ in nothing but the name of the file are represented by the first, the second and the
 * last of their kind; {@code -Dstackside.failures=every} tries each single one.
 */
@Tag("thorough")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class EveryCommandFailureTest {
  private static final boolean EVERY = "every".equals(System.getProperty("stackside.failures"));

  private Path base;
  private Path signed;
  private int cases;
  private int healed;
  private String out = "";
  private String err = "";

  @BeforeAll
  void makeAUnitThatHasIssuedOnceAndChangedSince(@TempDir Path folder) throws IOException {
    base = folder;
    signed = base.resolve("signed");
    SmallOffice.issuedAndChanged(signed);
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsLost(Writing command) throws IOException {
    Path start = base.resolve("start-" + command);
    SmallOffice.link(signed, start);
    if (command == Writing.ISSUE) {
      run(start, new LocalDisk(), Writing.APPROVE.arguments());
    }
    SortedMap<String, Fingerprint> before = SmallOffice.contents(start.resolve(command.target()));
    Path whole = base.resolve("whole-" + command);
    SmallOffice.link(start, whole);
    FailingDisk sound = new FailingDisk(Integer.MAX_VALUE, Moment.BEFORE, Then.STAYS_DEAD);
    assertThat(run(whole, sound, command.arguments())).as(out + err).isIn(0, 1, 4);
    SortedMap<String, Fingerprint> after = SmallOffice.contents(whole.resolve(command.target()));
    assertThat(after).isNotEqualTo(before);
    cases = 0;
    healed = 0;
    boolean every = EVERY || command == Writing.APPROVE;
    for (int operation : every ? all(sound) : representatives(command, sound, whole)) {
      for (Moment moment : momentsOf(sound.done().get(operation - 1))) {
        for (Then then : every ? Then.values() : one(operation + cases)) {
          Path here = base.resolve("case-" + command + "-" + cases);
          SmallOffice.link(start, here);
          fails(command, here, new FailingDisk(operation, moment, then), before, after);
          SmallOffice.delete(here);
        }
      }
    }
    System.out.printf(
        "%s: %d operations, %d failures, %d healed by an issue, 0 losses%n",
        command.arguments().get(0), sound.operations(), cases, healed);
    assertThat(cases).isGreaterThan(100);
  }

  private void fails(
      Writing command,
      Path here,
      FailingDisk disk,
      SortedMap<String, Fingerprint> before,
      SortedMap<String, Fingerprint> after)
      throws IOException {
    int code = run(here, disk, command.arguments());
    disk.giveLocksBack();
    String told = "%s, code %d: %s%s".formatted(disk, code, out, err);
    assertThat(disk.failed()).as(told).isTrue();
    cases++;
    assertThat(err).as(told).doesNotContain("itself failed", "Exception", "\tat ");
    assertThat(code).as(told).isIn(0, 1, 3, 4);
    if (code == 3) {
      assertThat(err).as(told).contains("stackside: ");
    }
    assertThat(SmallOffice.contents(here.resolve("content")).keySet())
        .as(told)
        .containsAll(SmallOffice.contents(signed.resolve("content")).keySet());
    if (command == Writing.APPROVE) {
      ledgerIsWhole(here, told, before, after);
    } else if (err.contains("the ledger was not at hand")) {
      assertThat(books(here).register().last(Deed.WITHDRAWAL)).as(told).isEqualTo(1);
    } else {
      treeIsWhole(command, here, code, told, before, after);
    }
    if (command == Writing.ISSUE || command == Writing.WITHDRAW) {
      oneCommandHeals(command, here, told);
    }
  }

  private static Books books(Path here) throws IOException {
    try {
      return new Books(
          ApprovalFiles.in(new LocalDisk(), here.resolve("content")).read().approvals(),
          Register.read(Files.readString(here.resolve("site").resolve(Register.FILE))));
    } catch (DamagedRegister e) {
      throw new AssertionError(e);
    }
  }

  private static boolean isWhole(Books books) {
    return books.match() == Books.Match.IN_STEP && books.adopted().equals(books);
  }

  /** Wherever it was cut off, the next issue goes on, and gives no number a second time. */
  private void oneCommandHeals(Writing command, Path here, String told) throws IOException {
    // Nobody has signed what changed before a withdrawal, so cards are held back all the time.
    int held = command == Writing.ISSUE ? 0 : ExitCode.HELD_BACK.number();
    if (!isWhole(books(here))) {
      healed++;
      assertThat(run(here, new LocalDisk(), List.of("issue")))
          .as(told + out + err)
          .isIn(0, 1, held);
    }
    Books books = books(here);
    assertThat(isWhole(books)).as(told).isTrue();
    assertThat(books.ledger().acts())
        .as(told)
        .extracting(act -> act.deed() + " " + act.number())
        .doesNotHaveDuplicates();
    assertThat(run(here, new LocalDisk(), List.of("check"))).as(told + err).isEqualTo(held);
  }

  /** Every signature stands with a copy of what was signed; the ledger is the old or the new. */
  private static void ledgerIsWhole(
      Path here,
      String told,
      SortedMap<String, Fingerprint> before,
      SortedMap<String, Fingerprint> after)
      throws IOException {
    SortedMap<String, Fingerprint> now = SmallOffice.contents(here.resolve("content"));
    assertThat(now.get(Ledger.FILE)).as(told).isIn(before.get(Ledger.FILE), after.get(Ledger.FILE));
    boolean signed = now.get(Ledger.FILE).equals(after.get(Ledger.FILE));
    (signed ? after : before)
        .forEach((file, bytes) -> assertThat(now).as(told).containsEntry(file, bytes));
  }

  /** A whole tree stands at its place or its recovery name, and the next run puts it right. */
  private static void treeIsWhole(
      Writing command,
      Path here,
      int code,
      String told,
      SortedMap<String, Fingerprint> before,
      SortedMap<String, Fingerprint> after)
      throws IOException {
    Path target = here.resolve(command.target());
    Path recovery = target.resolveSibling(target.getFileName() + ".stackside-previous");
    SortedMap<String, Fingerprint> there = SmallOffice.contents(target);
    if (!there.equals(before) && !there.equals(after)) {
      assertThat(SmallOffice.contents(recovery)).as(told).isEqualTo(before);
      assertThat(told).contains(recovery.toString(), "the next run restores them");
    }
    try (OutputFolder folder = OutputFolder.hold(new LocalDisk(), target)) {
      SortedMap<String, Fingerprint> restored = SmallOffice.contents(target);
      assertThat(restored).as(told).isIn(before, after);
      if (code != 3) {
        assertThat(restored).as(told).isEqualTo(after);
      }
      assertThat(folder.files()).as(told).hasSizeGreaterThan(100);
    }
  }

  private int run(Path folder, Disk disk, List<String> arguments) {
    SmallOffice.Ended ended = SmallOffice.run(folder, disk, arguments.toArray(String[]::new));
    out = ended.out();
    err = ended.err();
    return ended.code();
  }

  private static List<Integer> all(FailingDisk sound) {
    return Stream.iterate(1, n -> n + 1).limit(sound.operations()).toList();
  }

  /** Only writing can stop halfway; renaming and the rest happen or do not. */
  private static List<Moment> momentsOf(FailingDisk.Done done) {
    return done.name().equals("write")
        ? List.of(Moment.values())
        : List.of(Moment.BEFORE, Moment.AFTER);
  }

  private static Then[] one(int number) {
    return new Then[] {number % 2 == 0 ? Then.WORKS_AGAIN : Then.STAYS_DEAD};
  }

  /** The first, the second and the last of each run of operations that differ in the file only. */
  private static Set<Integer> representatives(Writing command, FailingDisk sound, Path folder) {
    Set<Integer> chosen = new TreeSet<>();
    SortedMap<String, List<Integer>> kinds = new TreeMap<>();
    for (int i = 0; i < sound.done().size(); i++) {
      FailingDisk.Done done = sound.done().get(i);
      Path place = folder.relativize(done.path());
      String kind = done.name() + " " + place.subpath(0, Math.min(2, place.getNameCount()));
      if (!command.target().contains("/")) {
        kind = done.name() + " " + place.getName(0);
      }
      kinds.computeIfAbsent(kind, any -> new ArrayList<>()).add(i + 1);
    }
    for (List<Integer> numbers : kinds.values()) {
      chosen.addAll(numbers.subList(0, Math.min(2, numbers.size())));
      chosen.add(numbers.get(numbers.size() / 2));
      chosen.add(numbers.get(numbers.size() - 1));
    }
    return chosen;
  }
}
