package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.check.ContentRules;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.derive.signed.Approvals;
import stackside.derive.standing.DatedAhead;
import stackside.derive.standing.Standing;
import stackside.model.ThingId;
import stackside.publish.Disk;
import stackside.render.Marking;
import stackside.render.Publication;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.CardThings;
import stackside.source.Problem;
import stackside.source.Severity;
import stackside.source.SheetRow;
import stackside.source.Sources;

/**
 * Content that was read, linked, worked out and judged, together with its approvals.
 *
 * @param analysis absent where the unit itself could not be read
 * @param standing absent with the analysis
 * @param records the rows of measurement and service as written
 * @param problems of reading, of the rules and of the ledger; sorted, each once
 */
record CheckedContent(
    Sources sources,
    Optional<Analysis> analysis,
    Approvals approvals,
    Optional<Standing> standing,
    List<SheetRow> records,
    List<Problem> problems) {

  CheckedContent {
    records = List.copyOf(records);
    problems = List.copyOf(problems);
  }

  /** Reads a content folder and judges it as of a day; what has happened lies before today. */
  static CheckedContent of(Path content, Disk disk, LocalDate on, LocalDate today)
      throws IOException {
    return of(content, Optional.empty(), disk, on, today);
  }

  /** The same with templates from another place instead of the content's own. */
  static CheckedContent of(
      Path content, Optional<Path> templates, Disk disk, LocalDate on, LocalDate today)
      throws IOException {
    Reading reading = ContentReader.read(content, templates);
    ApprovalFiles.Read ledger = ApprovalFiles.in(disk, content).read();
    Approvals approvals = ledger.approvals();
    Optional<Analysis> analysis = reading.unit().map(Analysis::of);
    List<Problem> found = new ArrayList<>(ledger.problems());
    analysis.ifPresent(
        each -> {
          found.addAll(ContentRules.judge(each, on, reading.problems()));
          found.addAll(approvals.problems(today));
          found.addAll(DatedAhead.problems(each.unit(), today));
        });
    Optional<Standing> standing =
        analysis
            .map(each -> Standing.of(each.unit(), approvals, on))
            .map(each -> each.unless(thing -> isUnread(reading.problems(), thing)));
    return new CheckedContent(
            reading.sources(), analysis, approvals, standing, reading.records(), reading.problems())
        .with(found);
  }

  /** Whether something could not be read in the file or folder where things of this kind stand. */
  private static boolean isUnread(List<Problem> problems, ThingId thing) {
    return problems.stream()
        .filter(problem -> problem.severity() == Severity.ERROR && ErrorScope.isUnread(problem))
        .anyMatch(problem -> problem.at().file().startsWith(thing.kind().word() + "s"));
  }

  /**
   * What is open on the day, as far as that can be judged: not signed, overdue, not read back, not
   * measured.
   */
  List<OpenItem> matters() {
    List<Unread> unread = unread().toList();
    return allMatters().stream()
        .filter(matter -> unread.stream().noneMatch(each -> each.mayExplain(matter)))
        .toList();
  }

  /** What cannot be judged on the day, in sentences: each cause once, with a count. */
  List<String> notJudged() {
    return unread().flatMap(unread -> unread.words(allMatters()).stream()).toList();
  }

  private Stream<Unread> unread() {
    return analysis.stream().map(each -> Unread.in(each.unit(), this));
  }

  private List<OpenItem> allMatters() {
    return analysis
        .flatMap(each -> standing.map(stands -> OpenItem.of(each.unit(), stands, approvals)))
        .orElse(List.of());
  }

  /** Whether anything that a card shows is open on the day. */
  boolean holdsCards(LocalDate on) {
    Set<ThingId> unsettled = matters().stream().map(OpenItem::about).collect(Collectors.toSet());
    if (analysis.isEmpty() || unsettled.isEmpty() || errors().findAny().isPresent()) {
      return false;
    }
    Analysis shown = analysis.get();
    return CardPlanner.plans(new Publication(shown, List.of(), List.of(), Marking.ISSUED, on))
        .stream()
        .flatMap(plan -> CardThings.of(shown.unit(), plan).stream())
        .anyMatch(unsettled::contains);
  }

  /** The records without any mistake, which an issue can rest on. */
  List<SheetRow> soundRecords() {
    return records.stream().filter(row -> errors().noneMatch(error -> isOn(error, row))).toList();
  }

  Stream<Problem> errors() {
    return problems.stream().filter(problem -> problem.severity() == Severity.ERROR);
  }

  static boolean isOn(Problem problem, SheetRow row) {
    return problem.at().isOnLineOf(row.at());
  }

  /** The same with the problems that a later stage found. */
  CheckedContent with(List<Problem> found) {
    return telling(Stream.concat(problems.stream(), found.stream()).distinct().sorted().toList());
  }

  /** The same content with these problems in place of those found so far. */
  CheckedContent telling(List<Problem> others) {
    return new CheckedContent(sources, analysis, approvals, standing, records, others);
  }
}
