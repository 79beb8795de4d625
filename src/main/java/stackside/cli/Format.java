package stackside.cli;

import java.util.Locale;

/** The form in which a command prints. */
enum Format {
  /** For a person. */
  TEXT,
  /**
   * For another program: one JSON document on standard output, as {@code explain json} describes
   * it.
   */
  JSON;

  /** Whether a line asks for JSON, even if the line is wrong in other ways. */
  static boolean isJson(String... arguments) {
    String line = String.join("\n", arguments).toLowerCase(Locale.ROOT);
    return line.matches("(?s).+\n--format[=\n]json(\n.*)?");
  }

  static Format named(String word) throws UsageException {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "text" -> TEXT;
      case "json" -> JSON;
      default -> throw new UsageException("'--format' is text or json, not '" + word + "'");
    };
  }
}
