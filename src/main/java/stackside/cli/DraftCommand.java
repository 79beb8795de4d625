package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Register;
import stackside.publish.OutputFolder;
import stackside.render.site.OwnTemplates;

/** Builds a marked preview, even with problems. */
@Command(
    name = "draft",
    description = {
      "Builds a preview of the site and the cards, marked DRAFT throughout.",
      "Content with problems is built too; they stand on a page of their own."
    })
final class DraftCommand implements Callable<Integer> {
  private final Desk desk;

  @Mixin private Asked asked;

  @Option(
      names = "--site",
      paramLabel = "FOLDER",
      description =
          "The site folder of the last issue, which the preview follows; '${DEFAULT-VALUE}' if none is"
              + " named.")
  private Path site = Path.of("site");

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the preview goes; '${DEFAULT-VALUE}' if none is named.")
  private Path out = Path.of("target", "draft");

  @Option(
      names = "--templates",
      paramLabel = "FOLDER",
      description = "Templates of the unit's own, in place of those with the same names.")
  private Optional<Path> templates = Optional.empty();

  DraftCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    OwnTemplates own = desk.templates(templates);
    Path target = desk.outputFolder(out, content);
    Outcome outcome;
    try (Progress progress = desk.progress();
        OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), target)) {
      progress.stage("reading and judging the content");
      Judged judged = desk.judged(asked);
      Register last = desk.lastIssue(site, judged);
      Edition edition =
          Edition.draft(
              judged.after(last),
              Editions.drafts(last, desk.day(asked)),
              desk.day(asked),
              own,
              progress);
      List<String> notices = new ArrayList<>(folder.notices());
      Optional<Outcome.Written> written = Optional.empty();
      if (edition.files().isEmpty()) {
        notices.add("nothing was built, for the unit itself could not be read");
      } else {
        progress.stage("writing files");
        OutputFolder.Replaced replaced = folder.replace(edition.files());
        written =
            Optional.of(
                new Outcome.Written(
                    out, replaced.files(), replaced.changed(), out.resolve("index.html")));
      }
      outcome = Outcome.of("draft", desk.day(asked), edition.judged()).with(notices);
      outcome = written.map(outcome::with).orElse(outcome);
    }
    return desk.close(asked, outcome);
  }
}
