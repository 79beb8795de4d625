package stackside.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stackside.check.CheckedEdit;

/**
 * Every message that the firing fixtures bring, as an author sees it, in one file to be read aloud.
 * {@code mvn test -Dtest=MessagesTest -Dstackside.rewrite=true} writes it anew; the difference is
 * reviewed like code.
 */
final class MessagesTest {

  private static final Path MESSAGES = Path.of("src/test/resources/messages.txt");

  @Test
  void readAsReviewed() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path fixture : Fixtures.all(Fixtures.OF_CONTENT)) {
      if (Fixtures.fires(fixture)) {
        text.append("== ").append(Fixtures.OF_CONTENT.relativize(fixture)).append('\n');
        text.append(CheckedEdit.after(CheckedEdit.BASE, Fixtures.text(fixture)).print()).append('\n');
      }
    }
    if (Boolean.getBoolean("stackside.rewrite")) {
      Files.writeString(MESSAGES, text);
    }
    assertThat(text.toString()).isEqualTo(Files.readString(MESSAGES));
  }
}
