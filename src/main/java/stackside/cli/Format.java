package stackside.cli;

/** For whom a command prints. */
enum Format {
  /** For a person. */
  TEXT,
  /**
   * For another program: one JSON document on standard output, as the package's comment describes
   * it.
   */
  JSON
}
