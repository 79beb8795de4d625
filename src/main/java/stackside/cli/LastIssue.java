package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.edition.Books;
import stackside.derive.edition.RecordFaults;
import stackside.derive.edition.Records;
import stackside.derive.edition.Register;
import stackside.publish.Disk;
import stackside.source.Location;
import stackside.source.Note;
import stackside.source.Problem;

/**
 * What was issued before, for comparing content with.
 *
 * @param register empty where nothing of this content was issued
 * @param site the folder where it was looked for, as named
 * @param other the name of another unit whose issue lies there, if one does
 */
record LastIssue(Register register, Path site, Optional<String> other) {

  LastIssue(Register register, Path site) {
    this(register, site, Optional.empty());
  }

  /** What lies in a site folder; an issue of another unit is none of this one. */
  static LastIssue beside(Disk disk, Path folder, Path site, CheckedContent judged)
      throws IOException, UsageException {
    Register register = RegisterFile.beside(disk, folder).orElse(Register.none());
    boolean together =
        new Books(judged.approvals(), register).problems().isEmpty() || judged.analysis().isEmpty();
    Optional<String> name = together ? Optional.empty() : KeptUnit.name(disk, folder);
    boolean own =
        name.isEmpty()
            || judged.analysis().stream()
                .map(analysis -> analysis.unit().details().name().value())
                .anyMatch(name.get()::equals);
    return own ? new LastIssue(register, site) : new LastIssue(Register.none(), site, name);
  }

  /** A sentence that says what was compared. */
  String words() {
    return register
        .last()
        .map(last -> "compared with what '" + site + "' holds as of " + last.on())
        .orElseGet(
            () ->
                other
                        .map(name -> "'" + site + "' holds an issue of " + name + ", another unit")
                        .orElse("'" + site + "' holds no issue")
                    + ", so it was compared with none");
  }

  /**
   * Whether the records still stand as the register knows them. A row that cannot be read is told
   * of as that, and what its sheet lost meanwhile once it is mended; what else is wrong with a row
   * that was changed comes of the change and is not told beside it.
   */
  CheckedContent compared(CheckedContent judged) {
    List<Problem> found =
        judged
            .analysis()
            .map(each -> Records.problems(register, each.unit(), judged.records()))
            .orElse(List.of())
            .stream()
            .filter(problem -> !isToldAlready(judged, problem))
            .toList();
    List<Problem> others =
        judged.problems().stream()
            .filter(
                each ->
                    ErrorScope.isUnread(each) || found.stream().noneMatch(it -> explains(it, each)))
            .toList();
    return judged
        .telling(others)
        .with(found)
        .with(
            register.lines().isEmpty()
                ? List.of()
                : new Books(judged.approvals(), register).problems());
  }

  /** Whether a problem is about a row that is known to have been changed, or points to one. */
  private static boolean explains(Problem found, Problem other) {
    return found.fault().equals(RecordFaults.CHANGED)
        && Stream.concat(Stream.of(other.at()), other.notes().stream().map(Note::at))
            .anyMatch(found.at()::isOnLineOf);
  }

  /** Whether something in its sheet cannot be read, so that the row cannot be recognised. */
  private static boolean isToldAlready(CheckedContent judged, Problem lost) {
    return judged
        .errors()
        .filter(ErrorScope::isUnread)
        .filter(error -> error.at().file().equals(lost.at().file()))
        .anyMatch(error -> covers(judged, error, lost));
  }

  private static boolean covers(CheckedContent judged, Problem error, Problem lost) {
    if (!lost.fault().equals(RecordFaults.REMOVED)) {
      return error.at().isOnLineOf(lost.at());
    }
    String file = lost.at().file();
    return judged.records().stream().noneMatch(row -> row.at().file().equals(file))
        || (judged.records().stream().noneMatch(row -> CheckedContent.isOn(error, row))
            && mayBeAbout(judged, generator(judged, error.at()), lost));
  }

  private static boolean mayBeAbout(CheckedContent judged, String generator, Problem lost) {
    boolean known =
        judged.analysis().stream()
            .flatMap(each -> each.unit().assets().stream())
            .anyMatch(asset -> asset.id().slug().equals(generator));
    return !known
        || lost.notes().stream().anyMatch(note -> generator(judged, note.at()).equals(generator));
  }

  /** The number at the beginning of a row. */
  private static String generator(CheckedContent judged, Location at) {
    return judged.sources().excerpt(at).map(row -> row.replaceFirst(",.*", "")).orElse("");
  }
}
