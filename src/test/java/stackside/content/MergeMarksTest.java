package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a version control program leaves in a file when two people changed the same lines. */
final class MergeMarksTest {
  private static final String HELP =
      " | keep the right lines, and delete the others and every line of marks";

  @Test
  void eachUnfinishedMerge_isToldOnceAndNothingElseOfItsFile() {
    assertThat(
            Trial.bare()
                .with(
                    "instruments.yaml",
                    """
              - id: oval-snare
              <<<<<<< HEAD
                name: Oval
              =======
                name: Small oval
              >>>>>>> theirs
                kind: monopolar
              <<<<<<< HEAD
                connector: pin-3
              ||||||| base
                connector: pin-2
              =======
                connector: pin-1
              >>>>>>> theirs
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:2:1+12: a merge was not finished here: both versions stand in the file, down to line 6 [unfinished-merge]"
                + HELP,
            "instruments.yaml:8:1+12: a merge was not finished here: both versions stand in the file, down to line 14 [unfinished-merge]"
                + HELP);
  }

  @Test
  void aSheet_isToldOfInTheSameWords() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              <<<<<<< HEAD
              EQ-1,cordgrass,2.1,in use,2024-05-02
              =======
              EQ-1,cordgrass,2.1,spare,2024-05-02
              >>>>>>> theirs
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:1+12: a merge was not finished here: both versions stand in the file, down to line 6 [unfinished-merge]"
                + HELP);
  }

  @Test
  void aMarkLeftAlone_isToldOfToo() {
    assertThat(Trial.bare().with("instruments.yaml", "=======\n- id: oval-snare\n").problems())
        .containsExactly(
            "instruments.yaml:1:1+7: a merge was not finished here [unfinished-merge]" + HELP);
  }

  @Test
  void aHeadingUnderlinedWithEqualsSigns_isNone() {
    assertThat(
            Trial.bare()
                .with("handbook/argon.md", "Argon\n=======\n\nArgon is a gas.\n")
                .problems())
        .isEmpty();
  }
}
