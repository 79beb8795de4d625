package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stackside.publish.LocalDisk;

/** Files of three gigabytes where the commands expect small ones, under the usual heap. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HugeFilesTest {
  private static final long THREE_GIGABYTES = 3L << 30;

  private Path issued;
  @TempDir private Path folder;

  @BeforeAll
  void issue(@TempDir Path once) throws IOException {
    issued = once;
    SmallOffice.issuedAndChanged(issued);
  }

  @BeforeEach
  void takeACopy() throws IOException {
    Office.copy(issued, folder);
  }

  /** Takes no room on the disk: it is one hole from end to end. */
  private void puff(String name) throws IOException {
    Files.deleteIfExists(folder.resolve(name));
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
      file.setLength(THREE_GIGABYTES);
    }
  }

  private SmallOffice.Ended run(String... arguments) {
    return SmallOffice.run(folder, new LocalDisk(), arguments);
  }

  @Test
  void ledger() throws IOException {
    puff("content/approvals.csv");
    for (String command : new String[] {"check", "issue"}) {
      SmallOffice.Ended ended = run(command);
      assertThat(ended.code()).as(ended.told()).isEqualTo(1);
      assertThat(ended.err()).contains("the ledger is larger than 5 MB");
    }
  }

  @Test
  void ledgerToMerge() throws IOException {
    puff("theirs.csv");
    SmallOffice.Ended ended = run("approve", "--merge", "theirs.csv");
    assertThat(ended.code()).as(ended.told()).isEqualTo(1);
    assertThat(ended.err()).contains("the ledger is larger than 5 MB");
  }

  @Test
  void register() throws IOException {
    puff("site/register.json");
    SmallOffice.Ended ended = run("issue");
    assertThat(ended.code()).as(ended.told()).isEqualTo(2);
    assertThat(ended.err())
        .contains(
            "register.json is larger than 50 MB, and Stackside makes no file that large;"
                + " restore it from a copy");
  }

  @Test
  void marker() throws IOException {
    puff("site/.stackside");
    SmallOffice.Ended ended = run("issue");
    assertThat(ended.code()).as(ended.told()).isEqualTo(2);
    assertThat(ended.err()).contains("its file .stackside is damaged");
  }

  @Test
  void pageOfADraft() throws IOException {
    puff("target/draft/index.html");
    SmallOffice.Ended ended = run("draft");
    assertThat(ended.code()).as(ended.told()).isEqualTo(4);
    assertThat(Files.size(folder.resolve("target/draft/index.html"))).isLessThan(1_000_000);
  }

  @Test
  void content() throws IOException {
    puff("content/instruments.yaml");
    SmallOffice.Ended ended = run("check");
    assertThat(ended.code()).as(ended.told()).isEqualTo(1);
    assertThat(ended.err()).contains("the file is larger than 5 MB");
  }

  @Test
  void keptCopyOfWhatWasSigned() throws IOException {
    try (var kept = Files.list(folder.resolve("content/approved"))) {
      puff(folder.relativize(kept.sorted().findFirst().orElseThrow()).toString());
    }
    SmallOffice.Ended ended = run("check");
    assertThat(ended.code()).as(ended.told()).isEqualTo(1);
    assertThat(ended.err()).contains("no copy of what this line names");
  }
}
