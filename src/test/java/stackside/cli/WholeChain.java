package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.derive.edition.Editions;
import stackside.publish.LocalDisk;
import stackside.render.OutputFile;
import stackside.source.Problem;

/**
 * All that {@code check} does with a content folder, from its files to the printed words in both
 * formats, without a process of its own; and the files of a draft of it.
 */
public final class WholeChain {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private final CheckedContent judged;

  private WholeChain(CheckedContent judged) {
    this.judged = judged;
  }

  public static WholeChain of(Path content) throws IOException {
    return new WholeChain(CheckedContent.of(content, new LocalDisk(), DAY, DAY));
  }

  /** Whether a unit was read, with problems or without. */
  public boolean isReadable() {
    return judged.analysis().isPresent();
  }

  public List<Problem> problems() {
    return judged.problems();
  }

  /** The line that a problem is about, empty where there is none. */
  public String line(Problem problem) {
    return Optional.ofNullable(judged.sources().files().get(problem.at().file()))
        .map(file -> file.line(problem.at().line()))
        .orElse("");
  }

  /** Whether an author wrote this somewhere, so that a message may quote it. */
  public boolean isWritten(String words) {
    return judged.sources().files().values().stream()
        .flatMap(file -> file.lines().stream())
        .anyMatch(line -> line.contains(words));
  }

  /** What a person reads, of both streams. */
  public String text() {
    ByteArrayOutputStream words = new ByteArrayOutputStream();
    Console console = new Console(words, words);
    new RunResultText(console).print(RunResult.of("check", DAY, judged));
    console.delivered();
    return words.toString(UTF_8);
  }

  /** What another program reads. */
  public String json() {
    return RunResultJson.of(RunResult.of("check", DAY, judged));
  }

  /** The pages, cards and records of a draft. */
  public List<OutputFile> draft() {
    ByteArrayOutputStream nobody = new ByteArrayOutputStream();
    try (Progress quiet = Progress.on(new Console(nobody, nobody), Environment.Audience.PIPE)) {
      return Edition.draft(judged, Editions.none(), DAY, quiet).files();
    }
  }
}
