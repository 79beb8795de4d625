package stackside.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** What every command that reads content can be asked. */
final class Asked {

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "CONTENT",
      description = "The folder with the unit's content; '${DEFAULT-VALUE}' if none is named.")
  private Path content = Path.of("content");

  @Option(
      names = "--on",
      paramLabel = "YYYY-MM-DD",
      converter = Day.class,
      description = "The day to work for; today if none is given.")
  private Optional<LocalDate> on = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "For a person, or one JSON document on standard output.")
  private Format format = Format.TEXT;

  /** The content folder as named. */
  Path content() {
    return content;
  }

  LocalDate on(Surroundings surroundings) {
    return on.orElseGet(surroundings.today());
  }

  Format format() {
    return format;
  }

  /** Reads a date as it is written in the content, and no other form. */
  static final class Day implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String value) {
      try {
        return LocalDate.parse(value);
      } catch (DateTimeParseException e) {
        throw new TypeConversionException("'" + value + "' is no date such as 2026-03-01");
      }
    }
  }
}
