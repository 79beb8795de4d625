package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.publish.HastyDisk;

/** Words of the unit's own on their way to the wall: every command sees the same, and all sign. */
final class OwnWordsIssuedTest {
  @TempDir Path folder;

  private SmallOffice.Ended run(String... arguments) {
    return SmallOffice.run(folder, new HastyDisk(), arguments);
  }

  private void write(String words) throws IOException {
    Path file = folder.resolve("content/templates/words/en-US.txt");
    Files.createDirectories(file.getParent());
    Files.writeString(file, words);
  }

  @Test
  void wordsOfCards_waitForTheSignatureOfThePolicies() throws IOException {
    SmallOffice.issuedAndChanged(folder);
    Path profiles = folder.resolve("content/profiles/arrowgrass.yaml");
    Files.writeString(
        profiles,
        Files.readString(profiles).replace("    technique: Rinse the cut and look.\n", ""));
    assertThat(run("check").code()).isZero();

    write("card.set-up = Before you start\n");
    SmallOffice.Ended checked = run("check");
    assertThat(checked.code()).as(checked.told()).isEqualTo(4);
    assertThat(checked.out())
        .contains("unit:policies: ")
        .contains("card-words card.set-up: nothing → Before you start");
    SmallOffice.Ended issued = run("issue");
    assertThat(issued.code()).as(issued.told()).isEqualTo(4);
    assertThat(issued.out()).contains("stays up: ").doesNotContain("print these: ");

    SmallOffice.PEOPLE.forEach((role, who) -> run("approve", "--role", role, "--initials", who));
    SmallOffice.Ended signed = run("issue");
    assertThat(signed.code()).as(signed.told()).isZero();
    assertThat(signed.out()).contains("print these: ");
    assertThat(folder.resolve("site/issued/templates/words/en-US.txt"))
        .hasContent("card.set-up = Before you start");

    Files.delete(folder.resolve("content/unit.yaml"));
    SmallOffice.Ended withdrawn =
        run("withdraw", "asset:EQ-1", "--role", "lead-nurse", "--initials", "AB", "--reason", "x");
    assertThat(withdrawn.code()).as(withdrawn.told()).isZero();
  }

  @Test
  void wordsThatMislead_stopEverything() throws IOException {
    Office.copy(Path.of("src/test/resources/units/cholla"), folder.resolve("content"));
    write("card.column-yellow = Yellow: coagulation\ncard.column-blue = Blue: cut\n");
    SmallOffice.Ended issued = run("issue", "--first");
    assertThat(issued.code()).as(issued.told()).isEqualTo(1);
    assertThat(issued.err()).contains("[card-word-misleads]");
    assertThat(issued.out()).contains("nothing was issued");
    assertThat(folder.resolve("site/cards")).doesNotExist();
  }

  @Test
  void templatesAreTriedInADraftAlone() throws IOException {
    Office.copy(Path.of("src/test/resources/units/cholla"), folder.resolve("content"));
    for (String command : new String[] {"check", "approve", "issue", "withdraw"}) {
      assertThat(run(command, "--templates", "ours").err())
          .contains("there is no option '--templates'");
    }
  }
}
