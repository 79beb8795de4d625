package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.check.Catalogue;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.derive.edition.RecordFaults;
import stackside.derive.edition.Records;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.Standing;
import stackside.publish.Disk;
import stackside.source.Location;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Row;
import stackside.source.Severity;
import stackside.source.Sources;

/**
 * Content that was read, linked, worked out and judged, together with its approvals.
 *
 * @param analysis absent where the unit itself could not be read
 * @param standing absent with the analysis
 * @param records the rows of measurement and service as written
 * @param problems of reading, of the rules and of the ledger; sorted, each once
 */
record Judged(
    Sources sources,
    Optional<Analysis> analysis,
    Approvals approvals,
    Optional<Standing> standing,
    List<Row> records,
    List<Problem> problems) {

  Judged {
    records = List.copyOf(records);
    problems = List.copyOf(problems);
  }

  /** Reads a content folder and judges it as of a day. */
  static Judged of(Path content, Disk disk, LocalDate on) throws IOException {
    Reading reading = ContentReader.read(content);
    ApprovalFiles.Read ledger = new ApprovalFiles(disk, content).read();
    Approvals approvals = ledger.approvals();
    Optional<Analysis> analysis = reading.unit().map(Analysis::of);
    List<Problem> found = new ArrayList<>(ledger.problems());
    analysis.ifPresent(
        each -> {
          found.addAll(Catalogue.judge(each));
          found.addAll(approvals.problems(each.unit(), on));
        });
    Optional<Standing> standing =
        analysis.map(each -> Standing.of(each.unit(), on, SignedFacts.fingerprints(each.unit())));
    return new Judged(
            reading.sources(), analysis, approvals, standing, reading.records(), reading.problems())
        .with(found);
  }

  /** What does not stand as it should on the day. */
  List<Matter> matters() {
    return analysis
        .flatMap(each -> standing.map(stands -> Matter.of(each.unit(), stands, approvals)))
        .orElse(List.of());
  }

  /**
   * Compared with the register of earlier issues: their records still stand as they did. A row that
   * cannot be read is told of as that, and what its sheet lost meanwhile once it is mended; what
   * else is wrong with a row that was changed comes of the change and is not told beside it.
   */
  Judged after(Register register) {
    List<Problem> found =
        analysis
            .map(each -> Records.problems(register, each.unit(), records))
            .orElse(List.of())
            .stream()
            .filter(problem -> errors().filter(Reach::isUnread).noneMatch(e -> covers(e, problem)))
            .toList();
    List<Problem> others =
        problems.stream()
            .filter(
                each -> Reach.isUnread(each) || found.stream().noneMatch(it -> explains(it, each)))
            .toList();
    return new Judged(sources, analysis, approvals, standing, records, others).with(found);
  }

  /** Whether a problem is about a row, or notes one, of which it is known that it was changed. */
  private static boolean explains(Problem found, Problem other) {
    return found.fault().equals(RecordFaults.CHANGED)
        && Stream.concat(Stream.of(other.at()), other.notes().stream().map(Note::at))
            .anyMatch(at -> isOneLine(at, found.at()));
  }

  private static boolean isOneLine(Location one, Location other) {
    return one.file().equals(other.file()) && one.line() == other.line();
  }

  private Stream<Problem> errors() {
    return problems.stream().filter(problem -> problem.severity() == Severity.ERROR);
  }

  /**
   * Whether what is wrong with a row is told already, so that it cannot be known for what it was.
   */
  private boolean covers(Problem error, Problem lost) {
    if (!error.at().file().equals(lost.at().file())) {
      return false;
    }
    return lost.fault().equals(RecordFaults.REMOVED)
        ? records.stream().noneMatch(row -> isOn(error, row))
            && mayBeAbout(generator(error.at()), lost)
        : isOneLine(error.at(), lost.at());
  }

  private boolean mayBeAbout(String generator, Problem lost) {
    boolean known =
        analysis.stream()
            .flatMap(each -> each.unit().assets().stream())
            .anyMatch(asset -> asset.id().slug().equals(generator));
    return !known || lost.notes().stream().anyMatch(note -> generator(note.at()).equals(generator));
  }

  /** The number with which a row begins. */
  private String generator(Location at) {
    return sources.excerpt(at).map(row -> row.replaceFirst(",.*", "")).orElse("");
  }

  /** The records in which nothing is wrong, so that an issue can rest on them. */
  List<Row> soundRecords() {
    return records.stream().filter(row -> errors().noneMatch(error -> isOn(error, row))).toList();
  }

  private static boolean isOn(Problem problem, Row row) {
    return isOneLine(problem.at(), row.at());
  }

  /** With what a later stage found. */
  Judged with(List<Problem> found) {
    List<Problem> all =
        Stream.concat(problems.stream(), found.stream()).distinct().sorted().toList();
    return new Judged(sources, analysis, approvals, standing, records, all);
  }
}
