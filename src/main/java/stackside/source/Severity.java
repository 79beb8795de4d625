package stackside.source;

/**
 * How serious a problem is. An error stops the publishing of whatever depends on it. A warning asks
 * a question that the unit can answer in place. A note only informs.
 */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word as printed in messages. */
  public String word() {
    return switch (this) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }
}
