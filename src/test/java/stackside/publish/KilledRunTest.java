package stackside.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.render.OutputFile;

/** Kills a process that builds over and over, at moments left to chance, and looks for losses. */
final class KilledRunTest {

  private static final int FILES = 60;

  /** The process that gets killed: builds one tree after another until it ends by force. */
  static final class Builder {
    private Builder() {}

    public static void main(String[] arguments) throws IOException {
      Path target = Path.of(arguments[0]);
      for (int edition = Integer.parseInt(arguments[1]); ; edition++) {
        try (OutputFolder folder = OutputFolder.hold(disk(arguments[2]), target)) {
          folder.replace(tree(edition));
          System.out.write('.');
          System.out.flush();
        }
      }
    }
  }

  /** Where a build is when it gets killed. */
  enum Moment {
    ANY,
    BETWEEN_RENAMES
  }

  private static Disk disk(String moment) {
    return Moment.valueOf(moment) == Moment.ANY ? new LocalDisk() : PausingDisk.local();
  }

  private static List<OutputFile> tree(int edition) {
    return IntStream.range(0, FILES)
        .mapToObj(n -> OutputFile.text("d" + n % 7 + "/p" + n, edition + " " + "x".repeat(n * 50)))
        .toList();
  }

  @Test
  void treeIsWholeAfterAFewKills(@TempDir Path base) throws Exception {
    treeIsWholeAfter(4, base);
  }

  @Test
  @Tag("thorough")
  void treeIsWholeAfterManyKills(@TempDir Path base) throws Exception {
    treeIsWholeAfter(20, base);
  }

  private static void treeIsWholeAfter(int kills, Path base) throws Exception {
    Path target = base.resolve("site");
    long seed = System.nanoTime();
    Random chance = new Random(seed);
    int restored = 0;
    for (int kill = 0; kill < kills; kill++) {
      Moment moment = kill % 4 == 3 ? Moment.BETWEEN_RENAMES : Moment.ANY;
      killABuilder(target, 1 + kill * 1_000_000, moment, chance.nextInt(120));
      try (OutputFolder folder = OutputFolder.hold(new LocalDisk(), target)) {
        restored += folder.notices().size();
        assertIsOneWholeTree(folder, "seed " + seed + ", kill " + kill);
      }
    }
    System.out.println(
        kills + " kills, " + restored + " restored from between the renames, 0 losses");
    assertThat(restored).isGreaterThanOrEqualTo(kills / 4);
  }

  private static void killABuilder(Path target, int edition, Moment moment, int moreMillis)
      throws Exception {
    Process builder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Builder.class.getName(),
                target.toString(),
                String.valueOf(edition),
                moment.name())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (moment == Moment.ANY) {
      assertThat(builder.getInputStream().read()).as("the first build").isEqualTo('.');
      TimeUnit.MILLISECONDS.sleep(moreMillis);
    } else {
      assertThat(builder.getInputStream().read())
          .as("between the renames")
          .isEqualTo(PausingDisk.HERE);
    }
    builder.destroyForcibly().waitFor();
  }

  private static void assertIsOneWholeTree(OutputFolder folder, String when) throws IOException {
    List<OutputFile> files = List.copyOf(folder.files().values());
    assertThat(files).as(when).hasSize(FILES);
    String text = Files.readString(folder.path().resolve("d0/p0"));
    int edition = Integer.parseInt(text.strip());
    assertThat(files).as(when).containsExactlyInAnyOrderElementsOf(tree(edition));
  }
}
