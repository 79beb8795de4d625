package stackside.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Reads and judges; writes nothing. */
@Command(
    name = "check",
    description = "Reads the content and prints what is wrong with it; writes nothing.")
final class CheckCommand implements Callable<Integer> {
  private final Desk desk;

  @Mixin private Asked asked;

  CheckCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException, UsageException {
    Judged judged;
    try (Progress progress = desk.progress()) {
      progress.stage("reading and judging the content");
      judged = desk.judged(asked);
    }
    return desk.close(asked, Outcome.of("check", desk.day(asked), judged));
  }
}
