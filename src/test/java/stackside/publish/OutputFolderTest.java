package stackside.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.publish.PublishFailure.Reason;
import stackside.render.OutputFile;

final class OutputFolderTest {

  private static final List<OutputFile> FILES =
      List.of(OutputFile.text("index.html", "start"), OutputFile.text("rooms/a.html", "a"));

  @TempDir Path base;

  private OutputFolder.Replaced build(List<OutputFile> files) throws IOException {
    try (OutputFolder folder = hold()) {
      return folder.replace(files);
    }
  }

  private OutputFolder hold() throws PublishFailure {
    return OutputFolder.hold(new LocalDisk(), target());
  }

  private Path target() {
    return base.resolve("the site, é");
  }

  @Test
  void missingFolder_isMade() throws IOException {
    assertThat(build(FILES)).isEqualTo(new OutputFolder.Replaced(2, 2));
    assertThat(target().resolve("rooms/a.html")).hasContent("a");
  }

  @Test
  void emptyFolder_isTaken() throws IOException {
    Files.createDirectory(target());
    build(FILES);
    assertThat(target().resolve("index.html")).hasContent("start");
  }

  @Test
  void folderOfOurs_isReplacedWhole() throws IOException {
    build(FILES);
    assertThat(build(List.of(OutputFile.text("index.html", "next"))))
        .isEqualTo(new OutputFolder.Replaced(1, 1));
    assertThat(target().resolve("rooms")).doesNotExist();
    assertThat(target().resolve("index.html")).hasContent("next");
  }

  @Test
  void sameFiles_touchNothing() throws IOException {
    build(FILES);
    Object before = fileKey(target());
    assertThat(build(FILES)).isEqualTo(new OutputFolder.Replaced(2, 0));
    assertThat(fileKey(target())).isEqualTo(before);
  }

  @Test
  void fileThatDidNotChange_isNotWrittenAgain() throws IOException {
    build(FILES);
    Object before = fileKey(target().resolve("rooms/a.html"));
    build(List.of(OutputFile.text("index.html", "next"), FILES.get(1)));
    assertThat(fileKey(target().resolve("rooms/a.html"))).isEqualTo(before);
  }

  private static Object fileKey(Path path) throws IOException {
    return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
  }

  @Test
  void folderThatStacksideDidNotMake_isLeftAlone() throws IOException {
    Files.createDirectory(target());
    Files.writeString(target().resolve("thesis.txt"), "ten years");
    assertThatThrownBy(() -> build(FILES))
        .asInstanceOf(type(PublishFailure.class))
        .satisfies(e -> assertThat(e.reason()).isEqualTo(Reason.NOT_OURS))
        .extracting(Throwable::getMessage)
        .asString()
        .isEqualTo(
            target()
                + " was left unchanged because Stackside did not make it;"
                + " give --out a new or an empty folder");
    assertThat(target().resolve("thesis.txt")).hasContent("ten years");
  }

  @Test
  void ownFileInAFolderOfOurs_isNotTakenAway() throws IOException {
    build(FILES);
    Files.writeString(target().resolve("rooms/notes.txt"), "mine");
    assertThatThrownBy(() -> build(List.of()))
        .hasMessageStartingWith(target().resolve("rooms/notes.txt").toString())
        .hasMessageEndingWith("move that file elsewhere");
    assertThat(target().resolve("rooms/notes.txt")).hasContent("mine");
    assertThat(target().resolve("index.html")).hasContent("start");
  }

  @Test
  void whatFileManagersLeave_isNobodys() throws IOException {
    build(FILES);
    Files.writeString(target().resolve("rooms/.DS_Store"), "");
    build(List.of());
    assertThat(target().resolve("rooms")).doesNotExist();
  }

  @Test
  void file_isNotAFolder() throws IOException {
    Files.writeString(target(), "a file");
    assertThatThrownBy(() -> build(FILES)).hasMessageContaining("was left unchanged");
    assertThat(target()).hasContent("a file");
  }

  @Test
  void linkToAFolder_isTheFolder() throws IOException {
    Path real = Files.createDirectory(base.resolve("real"));
    Files.createSymbolicLink(target(), real);
    build(FILES);
    assertThat(real.resolve("rooms")).isNotEmptyDirectory();
    assertThat(target()).isSymbolicLink();
  }

  @Test
  void linkToSomebodysFolder_isLeftAlone() throws IOException {
    Path real = Files.createDirectory(base.resolve("real"));
    Files.writeString(real.resolve("notes.txt"), "mine");
    Files.createSymbolicLink(target(), real);
    assertThatThrownBy(() -> build(FILES)).hasMessageContaining("was left unchanged");
    assertThat(real.resolve("notes.txt")).hasContent("mine");
  }

  @Test
  void rootOfADisk_isRefused() {
    assertThatThrownBy(() -> OutputFolder.hold(new LocalDisk(), Path.of("/")))
        .hasMessageContaining("root of a disk");
  }

  @Test
  void damagedMarker_isNamed() throws IOException {
    build(FILES);
    Files.writeString(target().resolve(Marker.NAME), "format 9");
    assertThatThrownBy(() -> build(FILES))
        .hasMessageContaining("damaged or was made by a newer version of Stackside");
  }

  @Test
  void strangersAtOurNames_areLeftAlone() throws IOException {
    Neighbours names = Neighbours.of(new LocalDisk(), target());
    for (Path path : List.of(names.staged(), names.discarded(), names.previous())) {
      Files.createDirectory(path);
      Files.writeString(path.resolve("x"), "mine");
      assertThatThrownBy(() -> build(FILES)).hasMessageStartingWith(path + " is in the way");
      assertThat(path.resolve("x")).hasContent("mine");
      Files.delete(path.resolve("x"));
      Files.delete(path);
    }
  }

  @Test
  void cutBetweenTheRenames_isRestoredAndSaid() throws IOException {
    build(FILES);
    Files.move(target(), Neighbours.of(new LocalDisk(), target()).previous());
    try (OutputFolder folder = hold()) {
      assertThat(folder.notices())
          .containsExactly("an earlier run was interrupted; " + target() + " has been restored");
      assertThat(folder.files().values()).containsExactlyElementsOf(FILES);
    }
  }

  @Test
  void somethingElseInThePlaceOfALostTree_costsNeither() throws IOException {
    build(FILES);
    Path previous = Neighbours.of(new LocalDisk(), target()).previous();
    Files.move(target(), previous);
    Files.createDirectory(target());
    Files.writeString(target().resolve("x"), "mine");
    assertThatThrownBy(() -> build(FILES)).hasMessageContaining(previous.toString());
    assertThat(previous.resolve("index.html")).hasContent("start");
    assertThat(target().resolve("x")).hasContent("mine");
  }

  @Test
  void secondRunAtTheSameTime_stopsWithASentence() throws IOException {
    try (OutputFolder first = hold()) {
      assertThatThrownBy(this::hold)
          .asInstanceOf(type(PublishFailure.class))
          .satisfies(e -> assertThat(e.reason()).isEqualTo(Reason.BUSY))
          .extracting(Throwable::getMessage)
          .asString()
          .isEqualTo(
              "another run of Stackside is writing to "
                  + target()
                  + "; wait for it to end, then try again");
      first.replace(FILES);
    }
    assertThat(build(FILES).changed()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "No space left on device, the disk is full",
    "Read-only file system, the disk is read-only",
    "Disk quota exceeded, the disk quota is used up",
    "something odd, something odd"
  })
  void diskThatRefuses_isASentence(String reason, String words) {
    FileSystemException refusal = new FileSystemException("/x/index.html", null, reason);
    assertThat(PublishFailure.disk(refusal, Path.of("/x"), "Nothing was changed"))
        .hasMessage("cannot write to /x: " + words + " (/x/index.html). Nothing was changed");
  }

  @Test
  void missingPermission_isASentence() {
    assertThat(PublishFailure.disk(new AccessDeniedException("/x/y"), Path.of("/x"), "So"))
        .hasMessage("cannot write to /x: no permission (/x/y). So");
  }
}
