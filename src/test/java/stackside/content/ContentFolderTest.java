package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stackside.source.Severity;

/** Which files are read, and what is said of those that are not. */
final class ContentFolderTest {
  private static final String INSTRUMENTS =
      "- {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage:"
          + " 2000 V peak}\n";

  @Test
  void missingFolder_saysWhatToDo() {
    Path nowhere = Trial.empty().folder().resolve("nowhere");

    assertThat(stackside.Units.reading(nowhere).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.fault()).isEqualTo(ReadingFaults.NO_CONTENT);
              assertThat(problem.message()).isEqualTo("there is no folder '/unit/nowhere'");
              assertThat(problem.help())
                  .contains(
                      "name the folder that holds a unit's content, or begin one with 'stackside"
                          + " start'");
            });
  }

  @Test
  void emptyFolder_saysWhatToDo() {
    assertThat(Trial.empty().problems())
        .containsExactly(
            "unit.yaml:1:1+0: the folder '/unit' holds no file 'unit.yaml' [no-content] | name the"
                + " folder that holds a unit's content, or begin one with 'stackside start'");
    assertThat(Trial.empty().read().unit()).isEmpty();
  }

  @Test
  void unknownFile_isAWarningThatAsksForTheNearOne() {
    Trial trial = Trial.bare().with("machnies/cordgrass.yaml", Trial.MACHINE);

    assertThat(trial.problems())
        .containsExactly(
            "machnies:1:1+0: 'machnies' has no place in a unit's content and is not read"
                + " [unknown-file] | did you mean 'machines'?");
    assertThat(trial.read().problems().get(0).severity()).isEqualTo(Severity.WARNING);
  }

  @Test
  void fileOfAnotherEnding_isAWarning() {
    assertThat(Trial.bare().with("rooms/room-2.yml", "id: room-2\n").problems())
        .containsExactly(
            "rooms/room-2.yml:1:1+0: 'rooms/room-2.yml' has no place in a unit's content and is not"
                + " read [unknown-file] | files here are named 'ID.yaml'");
  }

  @Test
  void hiddenFilesReadmeAndSignedFacts_areLeftAlone() {
    assertThat(
            Trial.bare()
                .with(".gitignore", "x")
                .with("README.md", "# Our unit")
                .with("approved/3f9a.json", "{")
                .with("handbook/.draft.md", "no title")
                .problems())
        .isEmpty();
  }

  @Test
  void linkThatLeadsOut_isRefused() throws IOException {
    Trial trial = Trial.bare().with("../elsewhere/instruments.yaml", INSTRUMENTS);
    link(trial, "instruments.yaml", "../elsewhere/instruments.yaml");

    assertThat(trial.problems())
        .containsExactly(
            "instruments.yaml:1:1+0: this is a link to a place outside the folder"
                + " [leads-out-of-folder] | put the file itself here");
  }

  @Test
  void folderThatLeadsOut_isRefused() throws IOException {
    Trial trial = Trial.bare().with("../elsewhere/cordgrass.yaml", Trial.MACHINE);
    link(trial, "machines", "../elsewhere");

    assertThat(trial.problems())
        .containsExactly(
            "machines:1:1+0: this is a link to a place outside the folder"
                + " [leads-out-of-folder] | put the file itself here");
  }

  @Test
  void linkWithinTheFolder_isRead() throws IOException {
    Trial trial = Trial.bare().with("approved/instruments.yaml", INSTRUMENTS);
    link(trial, "instruments.yaml", "approved/instruments.yaml");

    assertThat(trial.problems()).isEmpty();
    assertThat(trial.read().unit().orElseThrow().instruments()).hasSize(1);
  }

  @Test
  void linkToNothing_cannotBeOpened() throws IOException {
    Trial trial = Trial.bare();
    link(trial, "instruments.yaml", "gone.yaml");

    assertThat(trial.problems())
        .containsExactly(
            "instruments.yaml:1:1+0: this file cannot be opened [unreadable-file] | check whether"
                + " it links to something that is gone, and whether you have permission to read it");
  }

  @Test
  void linkToItself_cannotBeOpened() throws IOException {
    Trial trial = Trial.bare();
    link(trial, "machines", "machines");

    assertThat(trial.messages()).containsExactly("this file cannot be opened");
  }

  @Test
  void folderNamedLikeAFile_isNoOrdinaryFile() {
    assertThat(Trial.bare().with("instruments.yaml/inside", "x").problems())
        .containsExactly(
            "instruments.yaml:1:1+0: this is not an ordinary file [unreadable-file] | put a text file"
                + " here");
  }

  @Test
  void fileNamedLikeAFolder_isRefused() {
    assertThat(Trial.bare().with("machines", "x").problems())
        .containsExactly(
            "machines:1:1+0: this is not a folder [unreadable-file] | make it a folder, or remove it");
  }

  @Test
  void fileOverFiveMegabytes_isRefused() {
    assertThat(Trial.bare().with("instruments.yaml", new byte[5 * 1024 * 1024 + 1]).problems())
        .containsExactly(
            "instruments.yaml:1:1+0: the file is larger than 5 MB [file-too-large] | split it, or"
                + " look for something pasted into it by mistake");
  }

  @Test
  void moreThanTwentyThousandFiles_areOneProblem() {
    Trial trial = Trial.bare();
    for (int i = 0; i < 20_002; i++) {
      trial.with("handbook/page-" + i + ".md", "# P");
    }

    assertThat(trial.read().problems())
        .extracting(problem -> problem.fault().id())
        .containsExactly("too-many-files");
  }

  private static void link(Trial trial, String name, String target) throws IOException {
    Path folder = trial.folder();
    Files.createSymbolicLink(folder.resolve(name), folder.getFileSystem().getPath(target));
  }
}
