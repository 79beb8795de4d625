package stackside.cli;

import java.util.List;
import stackside.source.Problem;
import stackside.source.Severity;

/** What a command answers to whoever started it. */
enum ExitCode {
  /** Done, and no errors in the content; warnings do not count. */
  CLEAN(0),
  /** Errors in the content. */
  CONTENT(1),
  /** The command was not one that Stackside knows, or named a folder that it may not use. */
  USAGE(2),
  /** Stackside or the disk failed. */
  FAILED(3);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }

  static ExitCode of(List<Problem> problems) {
    return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR)
        ? CONTENT
        : CLEAN;
  }
}
