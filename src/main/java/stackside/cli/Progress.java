package stackside.cli;

import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;

/**
 * Says what is being done and since when, to somebody who watches, once it has taken more than two
 * seconds: {@code painting the cards, 3 s …}.
 */
final class Progress implements AutoCloseable {
  private static final long PATIENCE = 2000;
  private static final long TICK = 500;
  private static final String CLEAR = "\r\u001b[K";

  private final Console console;
  private final long began = System.nanoTime();
  private final Timer timer = new Timer("progress", /* isDaemon= */ true);
  private String stage = "";
  private boolean shown;
  private boolean over;

  private Progress(Console console) {
    this.console = console;
  }

  static Progress on(Console console, Environment.Audience audience) {
    Progress progress = new Progress(console);
    if (audience == Environment.Audience.TERMINAL) {
      progress.timer.schedule(
          new TimerTask() {
            @Override
            public void run() {
              progress.show();
            }
          },
          PATIENCE,
          TICK);
    }
    return progress;
  }

  /** Names the work that begins now: {@code painting the cards}. */
  synchronized void stage(String words) {
    stage = words;
  }

  private synchronized void show() {
    if (!over) {
      shown = true;
      long seconds = Duration.ofNanos(System.nanoTime() - began).plusMillis(TICK / 2).toSeconds();
      console.passing(CLEAR + stage + ", " + seconds + " s …");
    }
  }

  @Override
  public synchronized void close() {
    over = true;
    timer.cancel();
    if (shown) {
      console.passing(CLEAR);
    }
  }
}
