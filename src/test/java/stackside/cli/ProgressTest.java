package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
final class ProgressTest {
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Console console = new Console(OutputStream.nullOutputStream(), err);

  private String shown() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void tellsATerminalTheStageAndTheSecondsAfterTwo() throws InterruptedException {
    long began = System.nanoTime();
    try (Progress progress = Progress.on(console, Environment.Audience.TERMINAL)) {
      progress.stage("painting the cards");
      while (!shown().contains("…")) {
        Thread.sleep(20);
      }
      assertThat(Duration.ofNanos(System.nanoTime() - began))
          .isGreaterThan(PATIENCE.minusMillis(50));
    }
    assertThat(shown()).containsPattern("painting the cards, [2-9] s …").endsWith("\r\u001b[K");
  }

  @Test
  void saysNothingOfShortWork() {
    try (Progress progress = Progress.on(console, Environment.Audience.TERMINAL)) {
      progress.stage("painting the cards");
    }
    assertThat(shown()).isEmpty();
  }

  @Test
  void saysNothingToAFileHoweverLongItTakes() throws InterruptedException {
    try (Progress progress = Progress.on(console, Environment.Audience.PIPE)) {
      progress.stage("painting the cards");
      Thread.sleep(PATIENCE.plusMillis(700).toMillis());
    }
    assertThat(shown()).isEmpty();
  }
}
