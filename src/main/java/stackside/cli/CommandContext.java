package stackside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import stackside.derive.edition.Books;
import stackside.derive.edition.Register;

/** What all commands share: the console, the environment, and how a command begins and ends. */
record CommandContext(Console console, Environment surroundings) {

  /** The content folder that was asked for. */
  Path contentFolder(ContentOptions asked) throws UsageException {
    return contentFolder(asked.content());
  }

  /** The content folder of this name. */
  Path contentFolder(Path given) throws UsageException {
    Path folder = path(given);
    if (!Files.isDirectory(folder)) {
      throw new UsageException(
          "there is no folder '"
              + given
              + "'; name the folder with the unit's content, or begin one with 'stackside start'");
    }
    return folder;
  }

  /** The content that was asked for, read and judged. */
  CheckedContent judged(ContentOptions asked) throws IOException, UsageException {
    return judged(asked, Optional.empty());
  }

  /** The content that was asked for, with other templates than its own if there are some to try. */
  CheckedContent judged(ContentOptions asked, Optional<Path> templates)
      throws IOException, UsageException {
    return CheckedContent.of(
        contentFolder(asked),
        templates,
        surroundings.disk(),
        day(asked),
        surroundings.today().get());
  }

  /** What was issued of this content before, as the site folder remembers it. */
  LastIssue lastIssue(Path site, CheckedContent judged) throws IOException, UsageException {
    return LastIssue.beside(surroundings.disk(), path(site), site, judged);
  }

  /** A path of the command line, as seen from the working folder. */
  Path path(Path given) {
    return surroundings.folder().resolve(given);
  }

  /** The folder for the output; never one that holds the content or lies in it. */
  Path outputFolder(Path given, Path content) throws UsageException {
    Path folder = path(given);
    Path place = folder.toAbsolutePath().normalize();
    Path read = content.toAbsolutePath().normalize();
    if (place.startsWith(read) || read.startsWith(place)) {
      throw new UsageException(
          "'"
              + given
              + "' and the content would lie inside each other; name another folder with --out");
    }
    return folder;
  }

  /** The folder for something that is no issue; never where an issue lies, for that is a record. */
  Path scratchFolder(Path given, Path content) throws IOException, UsageException {
    Path folder = outputFolder(given, content);
    for (Path place = folder.toAbsolutePath().normalize();
        place != null;
        place = place.getParent()) {
      if (Files.exists(place.resolve(Register.FILE))) {
        throw new UsageException(
            "'"
                + place
                + "' holds what was issued, with its register, and only 'issue', 'withdraw' and"
                + " 'lift' write there; name another folder with --out");
      }
    }
    return folder;
  }

  /** The day of a deed: never one that lies ahead, or before what was decided last. */
  LocalDate dayOf(Optional<LocalDate> given, Books books) throws UsageException {
    LocalDate today = surroundings.today().get();
    LocalDate day = given.orElse(today);
    Optional<String> refused = books.refused(day, today);
    if (refused.isPresent()) {
      throw new UsageException(
          "nothing can be decided on that day: "
              + refused.get()
              + (given.isPresent() ? "" : "; set the clock"));
    }
    return day;
  }

  /** A folder with templates to try, if one was named. */
  Optional<Path> templates(Optional<Path> given) throws UsageException {
    if (given.isEmpty()) {
      return given;
    }
    Path folder = path(given.get());
    if (!Files.isDirectory(folder)) {
      throw new UsageException("there is no folder '" + given.get() + "' with templates");
    }
    return Optional.of(folder);
  }

  LocalDate day(ContentOptions asked) {
    return asked.on(surroundings);
  }

  Progress progress() {
    return Progress.on(console, surroundings.terminal());
  }

  /** Prints the result in the form that was asked for, and returns its exit code. */
  ExitCode close(ContentOptions asked, RunResult outcome) {
    switch (asked.format()) {
      case TEXT -> new RunResultText(console).print(outcome);
      case JSON -> console.result(RunResultJson.of(outcome));
    }
    return outcome.exitCode();
  }
}
