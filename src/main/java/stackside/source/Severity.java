package stackside.source;

/**
 * What a problem asks for: an error stops publishing of what depends on it, a warning asks a
 * question that the unit can answer in place, a note only informs.
 */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word as messages print it. */
  public String word() {
    return switch (this) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }
}
