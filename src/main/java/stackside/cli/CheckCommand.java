package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Reads and judges; writes nothing. */
@Command(
    name = "check",
    description = "Reads the content and prints what is wrong with it; writes nothing.")
final class CheckCommand implements Callable<Integer> {
  private final Desk desk;

  @Mixin private Asked asked;

  @Option(
      names = "--site",
      paramLabel = "FOLDER",
      description =
          "The site folder of the last issue, to compare records with; '${DEFAULT-VALUE}' if none is"
              + " named.")
  private Path site = Path.of("site");

  CheckCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException, UsageException {
    Judged judged;
    try (Progress progress = desk.progress()) {
      progress.stage("reading and judging the content");
      judged = desk.judgedAfter(asked, site);
    }
    return desk.close(asked, Outcome.of("check", desk.day(asked), judged));
  }
}
