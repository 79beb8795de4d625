package stackside.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;

/** What follows the name of a command on the line. */
record Arguments(CommandLine line) {
  /** The sign that Java puts in place of a letter that the locale does not have. */
  private static final char UNREADABLE = '\ufffd';

  /** The argument that belongs to no option. */
  Optional<String> place() {
    return line.getArgList().stream().findFirst();
  }

  boolean has(Option option) {
    return line.hasOption(option);
  }

  /** Every value of an option that may be given more than once. */
  List<String> all(Option option) {
    String[] values = line.getOptionValues(option);
    return values == null ? List.of() : List.of(values);
  }

  Optional<String> text(Option option) throws UsageException {
    List<String> values = all(option);
    if (values.size() > 1) {
      throw new UsageException("give --" + option.getLongOpt() + " once");
    }
    return values.stream().findFirst();
  }

  Optional<Path> path(Option option) throws UsageException {
    Optional<String> text = text(option);
    return text.isEmpty() ? Optional.empty() : Optional.of(path(text.get()));
  }

  /** A text as the name of a file or folder. */
  static Path path(String text) throws UsageException {
    if (text.indexOf(UNREADABLE) >= 0) {
      throw new UsageException(
          "'"
              + text
              + "' holds letters that Java cannot read here; set LC_ALL to C.UTF-8 and run it again,"
              + " or name it in plain letters");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new UsageException("'" + text + "' cannot be the name of a file or folder");
    }
  }

  /** A day in the form that the content uses, and in no other. */
  Optional<LocalDate> day(Option option) throws UsageException {
    Optional<String> text = text(option);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text.get()));
    } catch (DateTimeParseException e) {
      throw new UsageException("'" + text.get() + "' is not a date such as 2026-03-01");
    }
  }
}
