package stackside.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.source.Problem;
import stackside.source.Severity;
import stackside.source.Sources;

/**
 * What a command that judges content has to say at its end.
 *
 * @param command its name
 * @param on the day that it worked for
 * @param sources for showing the lines that problems are about
 * @param problems sorted, each once
 * @param matters what does not stand as it should on the day; never counted among the problems
 * @param held whether a card is held back, though nothing may be wrong with the content
 * @param notices what happened on the way, in sentences
 * @param written absent where nothing was
 */
record RunResult(
    String command,
    LocalDate on,
    Sources sources,
    List<Problem> problems,
    List<OpenItem> matters,
    boolean held,
    List<String> notices,
    Optional<Written> written) {

  RunResult {
    problems = List.copyOf(problems);
    matters = List.copyOf(matters);
    notices = List.copyOf(notices);
  }

  /**
   * Files that a command wrote.
   *
   * @param changed how many of them are new or differ from what was there
   * @param open the file to open first
   */
  record Written(Path folder, int files, long changed, Path open) {}

  ExitCode exitCode() {
    if (count(Severity.ERROR) > 0) {
      return ExitCode.CONTENT;
    }
    return held ? ExitCode.HELD_BACK : ExitCode.CLEAN;
  }

  long count(Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }

  /** The same result, with what was written. */
  RunResult with(Written written) {
    return new RunResult(
        command, on, sources, problems, matters, held, notices, Optional.of(written));
  }

  /** The same result, with what happened on the way. */
  RunResult with(List<String> happened) {
    List<String> all = Stream.concat(notices.stream(), happened.stream()).toList();
    return new RunResult(command, on, sources, problems, matters, held, all, written);
  }

  /** The same result, once it is known whether all cards went out. */
  RunResult holding(boolean cards) {
    return new RunResult(command, on, sources, problems, matters, cards, notices, written);
  }

  /** The result of judging alone. */
  static RunResult of(String command, LocalDate on, CheckedContent judged) {
    return new RunResult(
        command,
        on,
        judged.sources(),
        judged.problems(),
        judged.matters(),
        false,
        judged.notJudged(),
        Optional.empty());
  }
}
