package stackside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import stackside.derive.edition.Register;

/** What all commands share: their console, their surroundings, and how they begin and end. */
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

  /** The content that was asked for, with other templates than its own if some are to be tried. */
  CheckedContent judged(ContentOptions asked, Optional<Path> templates)
      throws IOException, UsageException {
    return CheckedContent.of(contentFolder(asked), templates, surroundings.disk(), day(asked));
  }

  /** What was issued of this content before, as the site folder remembers it. */
  LastIssue lastIssue(Path site, CheckedContent judged) throws IOException, UsageException {
    Register register =
        RegisterFile.beside(surroundings.disk(), path(site), judged.approvals().ledger())
            .orElse(Register.none());
    return new LastIssue(register, site);
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

  /** Prints the outcome in the form that was asked for, and answers its exit code. */
  ExitCode close(ContentOptions asked, RunResult outcome) {
    switch (asked.format()) {
      case TEXT -> new RunResultText(console).print(outcome);
      case JSON -> console.result(RunResultJson.of(outcome));
    }
    return outcome.exitCode();
  }
}
