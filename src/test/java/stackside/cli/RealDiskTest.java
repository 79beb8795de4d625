package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.publish.LocalDisk;
import stackside.publish.PausingDisk;

/**
 * The commands that write, on disks that really are full, read-only or another one, without rights,
 * two at once, and killed. Disks of their own need root, as continuous integration has; on a desk
 * without it these cases are skipped.
 */
@Tag("thorough")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class RealDiskTest {
  /** What a command answers that has done its work. */
  private static final Set<Integer> WORKED = Set.of(0, 1, 4);

  private static final boolean CI = "true".equals(System.getenv("CI"));
  private static final int KILLS = 20;

  /** A unit before a command, and what the command makes of it on a sound disk. */
  private record Case(
      Path start, SortedMap<String, Fingerprint> before, SortedMap<String, Fingerprint> after) {}

  private Path base;
  private Path signed;
  private final Map<Writing, Case> cases = new EnumMap<>(Writing.class);
  private final List<Path> mounted = new ArrayList<>();

  @BeforeAll
  void makeAUnit(@TempDir Path folder) throws IOException {
    base = folder;
    signed = base.resolve("signed");
    SmallOffice.issuedAndChanged(signed);
    for (Writing command : Writing.values()) {
      Path start = base.resolve("start-" + command);
      Office.copy(signed, start);
      if (command == Writing.ISSUE) {
        Writing.APPROVE.run(start);
      }
      Path whole = base.resolve("whole-" + command);
      Office.copy(start, whole);
      SmallOffice.Ended ended = command.run(whole);
      assertThat(ended.code()).as(ended.told()).isIn(0, 1, 4);
      Case made =
          new Case(
              start,
              SmallOffice.contents(start.resolve(command.target())),
              SmallOffice.contents(whole.resolve(command.target())));
      assertThat(made.after()).isNotEqualTo(made.before());
      cases.put(command, made);
    }
  }

  @AfterAll
  void giveDisksBack() throws Exception {
    for (Path disk : mounted) {
      system("umount", "-l", disk.toString());
    }
  }

  private Case of(Writing command) {
    return cases.get(command);
  }

  // A full disk.

  @Test
  void fullDisk() throws Exception {
    int count = 0;
    for (Writing command : Writing.values()) {
      for (int kilobytes : List.of(0, 4, 16, 64, 256, 512)) {
        Path disk = disk("full-" + command + "-" + kilobytes, "24m");
        Path here = disk.resolve("unit");
        Office.copy(of(command).start(), here);
        Path filler = disk.resolve("filler");
        fillUpTo(filler, kilobytes);
        SmallOffice.Ended ended = command.run(here);
        if (ended.code() == 3) {
          assertThat(ended.err()).as(ended.told()).contains("the disk is full");
        }
        survives(command, here, ended);
        Files.delete(filler);
        goesOn(command, here);
        giveBack(disk);
        count++;
      }
    }
    System.out.println("full disk: " + count + " cases, 0 losses");
  }

  /** Leaves so much room on the disk that holds the file. */
  private static void fillUpTo(Path filler, int kilobytes) throws IOException {
    byte[] block = new byte[4096];
    try (var stream = Files.newOutputStream(filler)) {
      long free = Files.getFileStore(filler).getUsableSpace() - kilobytes * 1024L;
      for (long written = 0; written + block.length <= free; written += block.length) {
        stream.write(block);
      }
    }
  }

  // A disk that can only be read.

  @Test
  void readOnlyDisk() throws Exception {
    int count = 0;
    for (Writing command : Writing.values()) {
      Path disk = disk("read-only-" + command, "24m");
      Path here = disk.resolve("unit");
      Office.copy(of(command).start(), here);
      system("mount", "-o", "remount,ro", disk.toString());
      SmallOffice.Ended ended = command.run(here);
      assertThat(ended.code()).as(ended.told()).isEqualTo(3);
      assertThat(ended.err()).as(ended.told()).contains("the disk is read-only");
      assertThat(SmallOffice.contents(here.resolve(command.target())))
          .isEqualTo(of(command).before());
      system("mount", "-o", "remount,rw", disk.toString());
      goesOn(command, here);
      giveBack(disk);
      count++;
    }
    System.out.println("read-only disk: " + count + " cases, 0 losses");
  }

  // No permission: the process keeps its user, but not the right of root to pass over modes.

  @Test
  void folderThatMayNotBeWrittenTo() throws Exception {
    int count = 0;
    for (Writing command : Writing.values()) {
      for (String closed : List.of(command.target(), "")) {
        Path here = copy(command, "closed-" + closed.length());
        Path folder = here.resolve(closed);
        Path parent = closed.isEmpty() ? here.resolve(command.target()).getParent() : folder;
        SmallOffice.Ended ended = underMode(parent, "r-xr-xr-x", here, command.arguments());
        if (ended.code() == 3) {
          assertThat(ended.err()).as(ended.told()).contains("no permission");
        }
        survives(command, here, ended);
        goesOn(command, here);
        count++;
      }
    }
    System.out.println("no permission to write: " + count + " cases, 0 losses");
  }

  @Test
  void contentThatMayNotBeRead() throws Exception {
    int count = 0;
    for (List<String> command :
        List.of(
            List.of("check"), List.of("draft"), Writing.APPROVE.arguments(), List.of("issue"))) {
      Path some = approvedCopy();
      for (String closed :
          List.of(
              "unit.yaml",
              "profiles",
              "profiles/arrowgrass.yaml",
              "approvals.csv",
              "approved",
              "approved/" + some,
              "")) {
        Path here = base.resolve("unread-" + command.get(0) + "-" + count);
        Office.copy(of(Writing.ISSUE).start(), here);
        SortedMap<String, Fingerprint> before = SmallOffice.contents(here);
        SmallOffice.Ended ended =
            underMode(here.resolve("content").resolve(closed), "---------", here, command);
        speaksPlainly(ended);
        if (ended.code() == 3) {
          assertThat(ended.err()).contains("no permission");
        }
        assertThat(ended.code()).as(closed + " " + ended.told()).isIn(0, 1, 3, 4);
        assertThat(SmallOffice.contents(here).keySet())
            .as(closed + " " + ended.told())
            .containsAll(
                before.keySet().stream().filter(name -> name.startsWith("content")).toList());
        count++;
      }
    }
    System.out.println("no permission to read: " + count + " cases, 0 losses");
  }

  private Path approvedCopy() throws IOException {
    try (var list = Files.list(of(Writing.ISSUE).start().resolve("content/approved"))) {
      return list.sorted().findFirst().orElseThrow().getFileName();
    }
  }

  private static SmallOffice.Ended underMode(
      Path closed, String mode, Path here, List<String> arguments) throws Exception {
    var before = Files.getPosixFilePermissions(closed);
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString(mode));
    try {
      List<String> line = new ArrayList<>();
      if (isRoot()) {
        line.addAll(List.of("setpriv", "--bounding-set", "-dac_override,-dac_read_search"));
      }
      return new Running(here, line, arguments).ended();
    } finally {
      Files.setPosixFilePermissions(closed, before);
    }
  }

  // Two at once.

  @Test
  void twoAtOnce() throws Exception {
    int count = 0;
    int refused = 0;
    for (Writing command : Writing.values()) {
      for (int time = 0; time < 3; time++) {
        Path here = copy(command, "twice-" + time);
        Running one = new Running(here, List.of(), command.arguments());
        Running two = new Running(here, List.of(), command.arguments());
        for (SmallOffice.Ended ended : List.of(one.ended(), two.ended())) {
          speaksPlainly(ended);
          if (ended.code() == 3) {
            assertThat(ended.err()).contains("another run of Stackside is writing to");
            refused++;
          }
        }
        assertThat(WORKED.contains(one.ended().code()) || WORKED.contains(two.ended().code()))
            .isTrue();
        if (command != Writing.APPROVE) {
          assertThat(SmallOffice.contents(here.resolve(command.target())))
              .isEqualTo(of(command).after());
        }
        goesOn(command, here);
        count++;
      }
    }
    System.out.println("two at once: " + count + " cases, " + refused + " refused, 0 losses");
  }

  // Another file system than that of the working folder.

  @Test
  void targetOnAnotherDisk() throws Exception {
    Path disk = disk("another", "64m");
    int count = 0;
    for (Writing command : List.of(Writing.DRAFT, Writing.ISSUE, Writing.WITHDRAW)) {
      Path here = copy(command, "here");
      Path there = disk.resolve(command.name());
      Office.copy(here.resolve(command.target()), there);
      assertThat(Files.getFileStore(there)).isNotEqualTo(Files.getFileStore(here));
      List<String> arguments = new ArrayList<>(command.arguments());
      arguments.addAll(List.of("--out", there.toString()));
      SmallOffice.Ended ended =
          SmallOffice.run(here, new LocalDisk(), arguments.toArray(String[]::new));
      assertThat(ended.code()).as(ended.told()).isIn(0, 1, 4);
      assertThat(SmallOffice.contents(there)).isEqualTo(of(command).after());
      count++;
    }
    Path elsewhere = disk.resolve("content");
    Office.copy(of(Writing.APPROVE).start().resolve("content"), elsewhere);
    List<String> arguments = new ArrayList<>(Writing.APPROVE.arguments());
    arguments.add(elsewhere.toString());
    SmallOffice.Ended ended =
        SmallOffice.run(base, new LocalDisk(), arguments.toArray(String[]::new));
    assertThat(ended.code()).as(ended.told()).isZero();
    assertThat(SmallOffice.contents(elsewhere)).isEqualTo(of(Writing.APPROVE).after());
    count++;
    System.out.println("another disk: " + count + " cases, 0 losses");
  }

  // Kills.

  @Test
  void killedCommands() throws Exception {
    long seed = System.nanoTime();
    Random chance = new Random(seed);
    int writing = 0;
    int restored = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Writing command = kill % 2 == 0 ? Writing.DRAFT : Writing.ISSUE;
      Path here = copy(command, "kill-" + kill);
      Path target = here.resolve(command.target());
      Path staged = target.resolveSibling("." + target.getFileName() + ".stackside-new");
      boolean betweenRenames = kill % 5 == 4;
      Running running =
          new Running(
              here, List.of(), betweenRenames ? Pausing.class : Main.class, command.arguments());
      while (running.process.isAlive() && !running.isPausing() && !Files.exists(staged)) {
        TimeUnit.MILLISECONDS.sleep(1);
      }
      while (betweenRenames && running.process.isAlive() && !running.isPausing()) {
        TimeUnit.MILLISECONDS.sleep(5);
      }
      TimeUnit.MILLISECONDS.sleep(chance.nextInt(60));
      boolean alive = running.process.isAlive();
      running.process.destroyForcibly().waitFor();
      writing += alive ? 1 : 0;
      String told = "seed " + seed + ", kill " + kill + " of " + command;
      SortedMap<String, Fingerprint> there = SmallOffice.contents(target);
      if (!there.equals(of(command).before()) && !there.equals(of(command).after())) {
        Path recovery = target.resolveSibling(target.getFileName() + ".stackside-previous");
        assertThat(SmallOffice.contents(recovery)).as(told).isEqualTo(of(command).before());
        assertThat(command.run(here).told()).as(told).contains("has been restored");
        restored++;
      }
      goesOn(command, here);
    }
    System.out.printf(
        "kills: %d of draft and issue, %d while writing, %d restored, 0 losses%n",
        KILLS, writing, restored);
    assertThat(writing).isGreaterThan(KILLS / 2);
    assertThat(restored).isGreaterThanOrEqualTo(KILLS / 5);
  }

  // What must hold after every case.

  /** Nothing of before is lost, and the words are for the person at the keyboard. */
  private void survives(Writing command, Path here, SmallOffice.Ended ended) throws IOException {
    speaksPlainly(ended);
    assertThat(ended.code()).as(ended.told()).isIn(0, 1, 3, 4);
    SortedMap<String, Fingerprint> now = SmallOffice.contents(here.resolve(command.target()));
    if (command == Writing.APPROVE) {
      assertThat(now.get(Ledger.FILE))
          .as(ended.told())
          .isIn(of(command).before().get(Ledger.FILE), of(command).after().get(Ledger.FILE));
      assertThat(now)
          .as(ended.told())
          .containsKeys(of(command).before().keySet().toArray(String[]::new));
    } else {
      assertThat(now).as(ended.told()).isIn(of(command).before(), of(command).after());
    }
    assertThat(SmallOffice.contents(here.resolve("content")).keySet())
        .as(ended.told())
        .containsAll(SmallOffice.contents(of(command).start().resolve("content")).keySet());
  }

  private static void speaksPlainly(SmallOffice.Ended ended) {
    assertThat(ended.err()).as(ended.told()).doesNotContain("itself failed", "Exception", "\tat ");
    if (ended.code() == 3) {
      assertThat(ended.err()).as(ended.told()).contains("stackside: ");
    }
  }

  /** Once the disk works, the same command does what it would have done. */
  private void goesOn(Writing command, Path here) throws IOException {
    SmallOffice.Ended ended = command.run(here);
    SortedMap<String, Fingerprint> now = SmallOffice.contents(here.resolve(command.target()));
    if (command == Writing.WITHDRAW && ended.code() == 2) {
      assertThat(ended.err()).contains("is out of use already; nothing was changed");
    } else if (command != Writing.ISSUE || WORKED.contains(ended.code())) {
      assertThat(ended.code()).as(ended.told()).isIn(0, 1, 4);
    }
    assertThat(now.keySet()).as(ended.told()).containsAll(of(command).after().keySet());
    assertThat(now.size()).isGreaterThan(20);
  }

  private Path copy(Writing command, String name) throws IOException {
    Path here = base.resolve(name + "-" + command);
    Office.copy(of(command).start(), here);
    return here;
  }

  // Disks and processes.

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }

  private Path disk(String name, String size) throws Exception {
    if (CI) {
      assertThat(isRoot()).as("continuous integration runs as root").isTrue();
    }
    assumeTrue(isRoot(), "only root may mount a disk");
    Path disk = Files.createDirectory(base.resolve(name));
    system("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", disk.toString());
    mounted.add(disk);
    return disk;
  }

  private void giveBack(Path disk) throws Exception {
    system("umount", disk.toString());
    mounted.remove(disk);
  }

  private static void system(String... command) throws Exception {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String told = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor()).as(Arrays.toString(command) + told).isZero();
  }

  /** The program on a disk that waits between the renames to be killed. */
  static final class Pausing {
    private Pausing() {}

    public static void main(String[] arguments) {
      Environment real = Environment.real();
      Environment pausing =
          new Environment(
              real.folder(), real.today(), PausingDisk.local(), real.terminal(), real.in());
      System.exit(new Cli(System.out, System.err, pausing).run(arguments));
    }
  }

  /** A command in a process of its own. */
  private static final class Running {
    private final Path out;
    private final Path err;
    private final Process process;

    Running(Path folder, List<String> under, List<String> arguments) throws IOException {
      this(folder, under, Main.class, arguments);
    }

    Running(Path folder, List<String> under, Class<?> main, List<String> arguments)
        throws IOException {
      out = Files.createTempFile("out", ".txt");
      err = Files.createTempFile("err", ".txt");
      Path answers = Files.createTempFile("in", ".txt");
      Files.writeString(answers, "yes\n".repeat(100));
      List<String> line = new ArrayList<>(under);
      line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
      line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", classPath()));
      line.add(main.getName());
      line.addAll(arguments);
      line.addAll(List.of("--on", SmallOffice.DAY.toString()));
      process =
          new ProcessBuilder(line)
              .directory(folder.toFile())
              .redirectInput(answers.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
    }

    private static String classPath() {
      return Arrays.stream(System.getProperty("java.class.path").split(":", -1))
          .map(entry -> Path.of(entry).toAbsolutePath().toString())
          .reduce((one, two) -> one + ":" + two)
          .orElseThrow();
    }

    boolean isPausing() throws IOException {
      return Files.readString(out, UTF_8).indexOf(PausingDisk.HERE) >= 0;
    }

    SmallOffice.Ended ended() throws Exception {
      int code = process.waitFor();
      return new SmallOffice.Ended(
          code, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }
  }
}
