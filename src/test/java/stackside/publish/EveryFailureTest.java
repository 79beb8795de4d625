package stackside.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.publish.FailingDisk.Moment;
import stackside.publish.FailingDisk.Then;
import stackside.render.OutputFile;

/**
 * Makes every file operation of a build fail once, before, halfway and after, on a disk that works
 * again and on one that stays dead, and looks for what was lost.
 */
final class EveryFailureTest {

  private static final List<OutputFile> EARLIER =
      List.of(
          OutputFile.text("index.html", "earlier start"),
          OutputFile.text("same.css", "the same in both"),
          OutputFile.text("rooms/room-1.html", "goes away"),
          OutputFile.text("rooms/deep/x.html", "goes with its folder"));

  private static final List<OutputFile> NEXT =
      List.of(
          OutputFile.text("index.html", "next start"),
          OutputFile.text("same.css", "the same in both"),
          OutputFile.text("rooms/room-2.html", "is new"));

  /** What stands on the disk before the build that fails. */
  enum Before {
    NOTHING,
    NO_PARENT,
    EMPTY_FOLDER,
    EARLIER_TREE,
    CUT_BETWEEN_RENAMES,
    CUT_BEFORE_TIDYING,
    CUT_WHILE_DELETING,
    CUT_WHILE_STAGING;

    Path prepare(Path base) throws IOException {
      Path target = base.resolve(this == NO_PARENT ? "a/b/site" : "site");
      Files.writeString(base.resolve("own-notes.txt"), "the user's");
      Neighbours names = Neighbours.of(new LocalDisk(), target);
      switch (this) {
        case NOTHING, NO_PARENT -> {}
        case EMPTY_FOLDER -> Files.createDirectory(target);
        case EARLIER_TREE -> build(target, EARLIER);
        case CUT_BETWEEN_RENAMES -> {
          build(target, NEXT);
          Files.move(target, names.staged());
          build(target, EARLIER);
          Files.move(target, names.previous());
        }
        case CUT_BEFORE_TIDYING -> {
          build(target, NEXT);
          Files.move(target, base.resolve("aside"));
          build(target, EARLIER);
          Files.move(base.resolve("aside"), names.previous());
        }
        case CUT_WHILE_DELETING -> {
          build(target, NEXT);
          Files.move(target, names.discarded());
          Files.delete(names.discarded().resolve("index.html"));
          build(target, EARLIER);
        }
        case CUT_WHILE_STAGING -> {
          build(target, EARLIER);
          Files.createDirectory(names.staged());
          Files.writeString(names.staged().resolve(Marker.NAME), "");
          Files.writeString(names.staged().resolve("index.html"), "next st");
        }
      }
      return target;
    }

    boolean hasEarlierTree() {
      return switch (this) {
        case NOTHING, NO_PARENT, EMPTY_FOLDER -> false;
        case EARLIER_TREE,
            CUT_BETWEEN_RENAMES,
            CUT_BEFORE_TIDYING,
            CUT_WHILE_DELETING,
            CUT_WHILE_STAGING ->
            true;
      };
    }
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsLostInMemory(Before before) throws IOException {
    int cases = 0;
    for (Moment moment : Moment.values()) {
      for (Then then : Then.values()) {
        boolean more = true;
        for (int operation = 1; more; operation++) {
          try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
            Path base = Files.createDirectory(memory.getPath("/base"));
            more = survives(before, base, new FailingDisk(operation, moment, then));
            cases += more ? 1 : 0;
          }
        }
      }
    }
    System.out.println("publishing over " + before + ": " + cases + " failures, 0 losses");
    assertThat(cases).isGreaterThan(100);
  }

  @Test
  void nothingIsLostOnTheRealDisk(@TempDir Path folder) throws IOException {
    int cases = 0;
    for (Then then : Then.values()) {
      boolean more = true;
      for (int operation = 1; more; operation++) {
        Path base = Files.createDirectory(folder.resolve(then + "-" + operation));
        more =
            survives(Before.EARLIER_TREE, base, new FailingDisk(operation, Moment.HALFWAY, then));
        cases += more ? 1 : 0;
      }
    }
    System.out.println("publishing on the real disk: " + cases + " failures, 0 losses");
    assertThat(cases).isGreaterThan(100);
  }

  /** Whether the failure came at all; without one the build must have gone through. */
  private static boolean survives(Before before, Path base, FailingDisk disk) throws IOException {
    Path target = before.prepare(base);
    boolean returned = true;
    try (OutputFolder folder = OutputFolder.hold(disk, target)) {
      folder.replace(NEXT);
    } catch (PublishFailure e) {
      returned = false;
      assertThat(e).hasMessageContaining(target.toString());
      assertThat(disk.failed()).as(e.getMessage()).isTrue();
    }
    disk.giveLocksBack();
    somethingWholeStands(before, target);
    if (before == Before.EARLIER_TREE && disk.worksAgain() && !returned) {
      assertThat(contents(target)).isEqualTo(texts(EARLIER));
    }
    restoresAndGoesOn(before, target, returned);
    assertThat(base.resolve("own-notes.txt")).hasContent("the user's");
    return disk.failed();
  }

  /** Before any repair: a whole tree stands at the place or at the recovery name. */
  private static void somethingWholeStands(Before before, Path target) throws IOException {
    if (before.hasEarlierTree()) {
      Neighbours names = Neighbours.of(new LocalDisk(), target);
      assertThat(List.of(contents(target), contents(names.previous())))
          .as("%s, %s", names.target(), names.previous())
          .containsAnyOf(texts(EARLIER), texts(NEXT));
    }
  }

  private static void restoresAndGoesOn(Before before, Path target, boolean returned)
      throws IOException {
    try (OutputFolder folder = OutputFolder.hold(new LocalDisk(), target)) {
      SortedMap<String, String> now = texts(folder.files().values());
      if (returned) {
        assertThat(now).isEqualTo(texts(NEXT));
      } else {
        assertThat(now).isIn(before.hasEarlierTree() ? texts(EARLIER) : Map.of(), texts(NEXT));
      }
      folder.replace(NEXT);
      assertThat(texts(folder.files().values())).isEqualTo(texts(NEXT));
    }
    assertThat(contents(target)).isEqualTo(texts(NEXT));
    try (Stream<Path> beside = Files.list(target.getParent())) {
      assertThat(beside.map(path -> path.getFileName().toString()))
          .isSubsetOf("site", ".site.stackside-lock", "own-notes.txt");
    }
  }

  private static void build(Path target, List<OutputFile> files) throws IOException {
    try (OutputFolder folder = OutputFolder.hold(new LocalDisk(), target)) {
      folder.replace(files);
    }
  }

  private static SortedMap<String, String> texts(Iterable<OutputFile> files) {
    SortedMap<String, String> texts = new TreeMap<>();
    files.forEach(file -> texts.put(file.path(), new String(file.bytes(), UTF_8)));
    return texts;
  }

  private static SortedMap<String, String> contents(Path folder) throws IOException {
    SortedMap<String, String> texts = new TreeMap<>();
    if (Files.exists(folder)) {
      List<Path> files = new ArrayList<>();
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(Files::isRegularFile).forEach(files::add);
      }
      for (Path file : files) {
        texts.put(folder.relativize(file).toString(), Files.readString(file));
      }
      texts.remove(Marker.NAME);
    }
    return texts;
  }
}
