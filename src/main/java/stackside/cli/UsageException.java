package stackside.cli;

/** The command cannot be carried out as it was given. The message says what to give instead. */
final class UsageException extends Exception {
  private static final long serialVersionUID = 1;

  UsageException(String message) {
    super(message);
  }
}
