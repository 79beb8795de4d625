package stackside.cli;

import java.util.Locale;

/** For whom a command prints. */
enum Format {
  /** For a person. */
  TEXT,
  /**
   * For another program: one JSON document on standard output, as the package's comment describes
   * it.
   */
  JSON;

  static Format named(String word) throws UsageException {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "text" -> TEXT;
      case "json" -> JSON;
      default -> throw new UsageException("'--format' is text or json, not '" + word + "'");
    };
  }
}
