package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Issue;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.LedgerFaults;
import stackside.publish.OutputFolder;
import stackside.render.OutputFile;
import stackside.source.Location;
import stackside.source.Problem;

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
  static final CommandSpec FORM =
      ContentOptions.form(
          "issue",
          "Publishes what is right and signed; the rest stays at its last edition or comes down."
              + " Prints which cards to print and which to take down.",
          OUT,
          FIRST);

  private final CommandContext desk;
  private final ContentOptions asked;
  private final Path out;
  private final boolean first;

  IssueCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.of(given);
    this.out = given.path(OUT).orElse(Path.of("site"));
    this.first = given.has(FIRST);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    Path target = desk.outputFolder(out, content);
    try (Progress progress = desk.progress();
        OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), target)) {
      SortedMap<String, OutputFile> hanging = folder.files();
      Register before = before(hanging);
      progress.stage("reading and judging the content");
      CheckedContent judged = new LastIssue(before, out).compared(desk.judged(asked));
      List<Problem> ledger = ledgerProblems(judged, before);
      Optional<String> blocked = blocked(judged, ledger);
      if (blocked.isPresent()) {
        List<String> told = new ArrayList<>(folder.notices());
        told.add("nothing was issued: " + blocked.get());
        return stopped(judged.with(ledger), told);
      }
      progress.stage("making the pages and cards");
      OutputFile unit = KeptUnit.of(desk.surroundings().disk(), content);
      Issuing.Ready ready = Issuing.of(judged, before, hanging, desk.day(asked), unit);
      Optional<RunResult.Written> written = written(ready, before, folder);
      List<String> told = new ArrayList<>(folder.notices());
      told.addAll(IssueLists.of(ready, before));
      return ended(judged.with(ready.problems()), told, !allIssued(ready.issue()), written);
    }
  }

  /** An issue that would only repeat the last one is none. */
  private Optional<RunResult.Written> written(
      Issuing.Ready ready, Register before, OutputFolder folder) throws IOException {
    if (ready.register().equals(before)) {
      return Optional.empty();
    }
    OutputFolder.Replaced replaced = folder.replace(ready.files());
    return Optional.of(
        new RunResult.Written(
            out, replaced.files(), replaced.changed(), out.resolve("index.html")));
  }

  /** Why nothing can be issued at all, if so. */
  private static Optional<String> blocked(CheckedContent judged, List<Problem> ledger) {
    if (judged.analysis().isEmpty()) {
      return Optional.of("the unit itself could not be read");
    }
    if (!ledger.isEmpty()) {
      return Optional.of("the ledger of approvals is not as it was signed");
    }
    return Issuing.blocking(judged, judged.analysis().get().unit()).stream()
        .findFirst()
        .map(problem -> "the error at " + problem.at() + " may touch every card");
  }

  private ExitCode stopped(CheckedContent judged, List<String> told) {
    return ended(judged, told, true, Optional.empty());
  }

  private Register before(SortedMap<String, OutputFile> hanging) throws UsageException {
    if (first && hanging.isEmpty()) {
      return Register.none();
    }
    if (first) {
      throw new UsageException(
          out + " holds an issue already; leave out --first, or name another folder with --out");
    }
    return RegisterFile.in(hanging, out);
  }

  /** A ledger that was touched vouches for nothing. */
  private static List<Problem> ledgerProblems(CheckedContent judged, Register before) {
    Ledger ledger = judged.approvals().ledger();
    Optional<Fingerprint> head = before.ledgerHead();
    Stream<Problem> shortened =
        head.filter(seal -> !ledger.reaches(seal)).stream()
            .map(
                seal ->
                    LedgerFaults.SHORTENED
                        .at(
                            Location.startOf(Ledger.FILE),
                            "the ledger had a line with the seal "
                                + seal.shortText()
                                + " at the last issue, and has it no more")
                        .help("restore the ledger from a copy"));
    Stream<Problem> altered =
        judged.problems().stream().filter(each -> LedgerFaults.all().contains(each.fault()));
    return Stream.concat(shortened, altered).toList();
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
