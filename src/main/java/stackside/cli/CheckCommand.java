package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.cli.Option;

/** Reads and judges; writes nothing. */
final class CheckCommand implements Command {
  private static final Option SITE =
      CommandSpec.option(
          "site",
          "FOLDER",
          "The site folder of the last issue, to compare records with; 'site' if none is named.");
  static final CommandSpec FORM =
      ContentOptions.form(
          "check", "Reads the content and prints what is wrong with it; writes nothing.", SITE);

  private final CommandContext desk;
  private final ContentOptions asked;
  private final Path site;

  CheckCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.of(given);
    this.site = given.path(SITE).orElse(Path.of("site"));
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    CheckedContent judged;
    LastIssue last;
    try (Progress progress = desk.progress()) {
      progress.stage("reading and judging the content");
      judged = desk.judged(asked);
      last = desk.lastIssue(site, judged);
      judged = last.compared(judged);
    }
    return desk.close(
        asked,
        RunResult.of("check", desk.day(asked), judged)
            .holding(judged.holdsCards(desk.day(asked)))
            .with(List.of(last.words())));
  }
}
