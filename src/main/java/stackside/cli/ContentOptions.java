package stackside.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;

/**
 * The options of every command that reads content.
 *
 * @param content the folder as named
 * @param on the day to work for, if one was given
 */
record ContentOptions(Path content, Optional<LocalDate> on, Format format) {
  static final CommandSpec.Place CONTENT =
      new CommandSpec.Place(
          "CONTENT", false, "The folder with the unit's content; 'content' if none is named.");
  static final Option ON =
      CommandSpec.option("on", "YYYY-MM-DD", "The day to work for; today if none is given.");
  private static final Option FORMAT =
      CommandSpec.option(
          "format", "text|json", "For a person, or one JSON document on standard output.");

  /** The form of a command that reads content and takes these further options. */
  static CommandSpec form(String name, String purpose, Option... besides) {
    List<Option> options = Stream.concat(Stream.of(ON, FORMAT), Stream.of(besides)).toList();
    return new CommandSpec(name, purpose, Optional.of(CONTENT), options);
  }

  /** Of a command that prints for people alone. */
  static ContentOptions plain(Arguments given) throws UsageException {
    return new ContentOptions(
        Arguments.path(given.place().orElse("content")), given.day(ON), Format.named("text"));
  }

  static ContentOptions of(Arguments given) throws UsageException {
    return new ContentOptions(
        Arguments.path(given.place().orElse("content")),
        given.day(ON),
        Format.named(given.text(FORMAT).orElse("text")));
  }

  LocalDate on(Environment surroundings) {
    return on.orElseGet(surroundings.today());
  }
}
