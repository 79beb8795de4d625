package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Option;
import stackside.derive.edition.Editions;
import stackside.publish.OutputFolder;

/** Builds a marked preview, even with problems. */
final class DraftCommand implements Command {
  private static final Option SITE =
      CommandSpec.option(
          "site",
          "FOLDER",
          "The site folder of the last issue, which the preview follows; 'site' if none is named.");
  private static final Option OUT =
      CommandSpec.option(
          "out", "FOLDER", "Where the preview goes; 'target/draft' if none is named.");
  private static final Option TEMPLATES =
      CommandSpec.option(
          "templates",
          "FOLDER",
          "Templates and words to try in the preview, in place of those in the content.");
  static final CommandSpec FORM =
      ContentOptions.form(
          "draft",
          "Builds a preview of the site and the cards, marked DRAFT throughout. Content with"
              + " problems is built too; they stand on a page of their own.",
          SITE,
          OUT,
          TEMPLATES);

  private final CommandContext desk;
  private final ContentOptions asked;
  private final Path site;
  private final Path out;
  private final Optional<Path> templates;

  DraftCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.of(given);
    this.site = given.path(SITE).orElse(Path.of("site"));
    this.out = given.path(OUT).orElse(Path.of("target", "draft"));
    this.templates = given.path(TEMPLATES);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    Optional<Path> tried = desk.templates(templates);
    Path target = desk.scratchFolder(out, content);
    RunResult outcome;
    try (Progress progress = desk.progress();
        OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), target)) {
      progress.stage("reading and judging the content");
      CheckedContent judged = desk.judged(asked, tried);
      LastIssue last = desk.lastIssue(site, judged);
      Edition edition =
          Edition.draft(
              last.compared(judged),
              Editions.drafts(last.register(), desk.day(asked)),
              desk.day(asked),
              progress);
      List<String> notices = new ArrayList<>(folder.notices());
      notices.add(last.words());
      templates.ifPresent(
          each ->
              notices.add(
                  "tried with the templates of '" + each + "'; only the content's own are issued"));
      Optional<RunResult.Written> written = Optional.empty();
      if (edition.files().isEmpty()) {
        notices.add("nothing was built, because unit.yaml could not be read");
      } else {
        progress.stage("writing files");
        OutputFolder.Replaced replaced = folder.replace(edition.files());
        written =
            Optional.of(
                new RunResult.Written(
                    out, replaced.files(), replaced.changed(), out.resolve("index.html")));
      }
      outcome =
          RunResult.of("draft", desk.day(asked), edition.judged())
              .holding(edition.judged().holdsCards(desk.day(asked)))
              .with(notices);
      outcome = written.map(outcome::with).orElse(outcome);
    }
    return desk.close(asked, outcome);
  }
}
