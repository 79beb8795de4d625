package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.signed.Fingerprint;
import stackside.publish.LocalDisk;

/** What a preview says of the edition that its cards would bear. */
class DraftTest {
  private static final String CARDS = "target/draft/cards";

  @TempDir private Path folder;

  private String draft(String... more) throws IOException {
    String[] arguments = Stream.concat(Stream.of("draft"), Stream.of(more)).toArray(String[]::new);
    SmallOffice.Ended ended = SmallOffice.run(folder, new LocalDisk(), arguments);
    assertThat(ended.code()).as(ended.told()).isEqualTo(4);
    try (Stream<Path> walk = Files.walk(folder.resolve("target/draft/answers"))) {
      return walk.filter(Files::isRegularFile).map(DraftTest::text).collect(Collectors.joining());
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file).replace('\u00a0', ' ');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void cardsBearTheEditionTheyFollowAndTheDay() throws IOException {
    SmallOffice.issuedAndChanged(folder);
    assertThat(draft("--on", "2026-03-02")).contains("draft 1.1 of 2 March 2026");
    SortedMap<String, Fingerprint> cards = SmallOffice.contents(folder.resolve(CARDS));
    assertThat(draft("--on", "2026-03-03")).contains("draft 1.1 of 3 March 2026");
    assertThat(SmallOffice.contents(folder.resolve(CARDS)))
        .hasSameSizeAs(cards)
        .allSatisfy((name, card) -> assertThat(card).isNotEqualTo(cards.get(name)));
    assertThat(draft("--on", "2026-03-03", "--site", "elsewhere"))
        .contains("draft 0.1 of 3 March 2026");
  }
}
