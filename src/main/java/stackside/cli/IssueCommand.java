package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.cli.Option;
import stackside.derive.edition.Books;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Issue;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.publish.OutputFolder;
import stackside.publish.SafeFile;
import stackside.render.OutputFile;

/** Publishes what may be published, card by card. */
final class IssueCommand implements Command {
  private static final Option OUT =
      CommandSpec.option(
          "out",
          "FOLDER",
          "The site folder, with the register of earlier issues; 'site' if none is named.");
  private static final Option FIRST =
      CommandSpec.mark(
          "first", "Says that this unit never issued anything, so that there is no register.");
  private static final Option SITE_LOST =
      CommandSpec.mark(
          "site-lost",
          "Says that the site folder is lost for good; what was issued and withdrawn is taken from"
              + " the ledger.");
  static final CommandSpec FORM =
      ContentOptions.form(
          "issue",
          "Publishes what is right and signed; the rest stays at its last edition or comes down."
              + " Prints which cards to print and which to take down.",
          OUT,
          FIRST,
          SITE_LOST);

  private final CommandContext desk;
  private final ContentOptions asked;
  private final Path out;
  private final boolean first;
  private final boolean siteLost;

  IssueCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.of(given);
    this.out = given.path(OUT).orElse(Path.of("site"));
    this.first = given.has(FIRST);
    this.siteLost = given.has(SITE_LOST);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    Path target = desk.outputFolder(out, content);
    ApprovalFiles files = ApprovalFiles.in(desk.surroundings().disk(), content);
    try (Progress progress = desk.progress();
        OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), target);
        SafeFile ledger = files.hold()) {
      Issuing.Hanging hanging = new Issuing.Hanging(folder.files(), folder.written());
      progress.stage("reading and judging the content");
      CheckedContent read = desk.judged(asked);
      Register register = before(hanging.files(), read.approvals());
      CheckedContent judged = new LastIssue(register, out).compared(read);
      Books books = new Books(read.approvals(), register).adopted();
      Optional<String> blocked = blocked(judged, books);
      if (blocked.isPresent()) {
        List<String> told = new ArrayList<>(folder.notices());
        told.add("nothing was issued: " + blocked.get());
        return stopped(judged.with(books.problems()), told);
      }
      LocalDate day = desk.dayOf(asked.on(), books);
      progress.stage("making the pages and cards");
      OutputFile unit = KeptUnit.of(desk.surroundings().disk(), content);
      Issuing.Ready ready = Issuing.of(judged, day, books, hanging, unit);
      OutputFolder.Staged staged = folder.stage(ready.files());
      files.write(read.approvals(), ready.after().approvals(), ledger);
      Optional<RunResult.Written> written = written(staged.swap(), ready, books);
      List<String> told = new ArrayList<>(folder.notices());
      told.addAll(IssueLists.of(ready, books, hanging.altered()));
      return ended(judged.with(ready.problems()), told, !allIssued(ready.issue()), written);
    }
  }

  /** An issue that would only repeat the last one is none, even where files were made right. */
  private Optional<RunResult.Written> written(
      OutputFolder.Replaced replaced, Issuing.Ready ready, Books before) {
    return ready.after().register().equals(before.register())
        ? Optional.empty()
        : Optional.of(
            new RunResult.Written(
                out, replaced.files(), replaced.changed(), out.resolve("index.html")));
  }

  /** Why nothing can be issued at all, if so. */
  private static Optional<String> blocked(CheckedContent judged, Books books) {
    if (judged.analysis().isEmpty()) {
      return Optional.of("the unit itself could not be read");
    }
    if (!books.problems().isEmpty()) {
      return Optional.of("the ledger and the site folder do not belong together as they are");
    }
    if (judged.errors().anyMatch(ErrorScope::isLedger)) {
      return Optional.of("the ledger of approvals is not as it was signed");
    }
    return Troubles.blocking(judged, judged.analysis().get().unit()).stream()
        .findFirst()
        .map(problem -> "the error at " + problem.at() + " may touch every card");
  }

  private ExitCode stopped(CheckedContent judged, List<String> told) {
    return ended(judged, told, true, Optional.empty());
  }

  private Register before(SortedMap<String, OutputFile> hanging, Approvals approvals)
      throws UsageException {
    if (siteLost) {
      return rebuilt(approvals);
    }
    if (first && hanging.isEmpty()) {
      return Register.none();
    }
    if (first) {
      throw new UsageException(
          out + " holds an issue already; leave out --first, or name another folder with --out");
    }
    return RegisterFile.in(hanging, out);
  }

  private static Register rebuilt(Approvals approvals) throws UsageException {
    return new Books(approvals, Register.none())
        .rebuilt()
        .filter(register -> !register.lines().isEmpty())
        .orElseThrow(
            () ->
                new UsageException(
                    "the ledger tells of no issue, or 'approved' lacks what its lines name; bring"
                        + " the content back from a copy"));
  }

  /** The lists are results for a person, and notices in the one document for a program. */
  private ExitCode ended(
      CheckedContent judged, List<String> told, boolean held, Optional<RunResult.Written> written) {
    RunResult outcome = RunResult.of("issue", desk.day(asked), judged).holding(held);
    if (asked.format() == Format.JSON) {
      outcome = outcome.with(told);
    } else {
      told.forEach(line -> desk.console().result(Printable.of(line).text()));
    }
    return desk.close(asked, written.map(outcome::with).orElse(outcome));
  }

  private static boolean allIssued(Issue issue) {
    return issue.decisions().stream()
        .map(Decision::outcome)
        .noneMatch(
            outcome ->
                outcome == Decision.Outcome.STAYS
                    || outcome == Decision.Outcome.NOT_YET
                    || outcome == Decision.Outcome.OUT_OF_USE);
  }
}
