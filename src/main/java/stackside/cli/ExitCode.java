package stackside.cli;

/** The exit code of a command. */
enum ExitCode {
  /** Done, and no errors in the content; warnings do not count. */
  CLEAN(0),
  /** Errors in the content. */
  CONTENT(1),
  /** Stackside does not know the command, or the command named a folder that it may not use. */
  USAGE(2),
  /** Stackside or the disk failed. */
  FAILED(3),
  /** Done, and no errors in the content; but cards are held back. */
  HELD_BACK(4);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }
}
