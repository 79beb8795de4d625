package stackside.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.edition.Register;
import stackside.render.site.OwnTemplates;
import stackside.source.SizeLimit;
import stackside.source.Utf8;

/** What all commands share: their console, their surroundings, and how they begin and end. */
record Desk(Console console, Surroundings surroundings) {

  /** The content folder that was asked for. */
  Path contentFolder(Asked asked) throws UsageException {
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
  Judged judged(Asked asked) throws IOException, UsageException {
    return Judged.of(contentFolder(asked), surroundings.disk(), day(asked));
  }

  /** What was issued of this content before, as the site folder remembers it. */
  LastIssue lastIssue(Path site, Judged judged) throws IOException, UsageException {
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
              + "' and the content would lie in each other; name another folder with --out");
    }
    return folder;
  }

  /** The unit's own templates, if a folder with some was named. */
  OwnTemplates templates(Optional<Path> given) throws IOException, UsageException {
    if (given.isEmpty()) {
      return OwnTemplates.none();
    }
    Path folder = path(given.get());
    if (!Files.isDirectory(folder)) {
      throw new UsageException("there is no folder '" + given.get() + "' with templates");
    }
    List<OwnTemplates.Template> templates = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).filter(Desk::named).sorted().toList()) {
        String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
        if (!OwnTemplates.replaceable(name)) {
          throw new UsageException(
              "'" + name + "' under '" + given.get() + "' replaces no template of the program");
        }
        templates.add(new OwnTemplates.Template(name, text(file, name)));
      }
    }
    return new OwnTemplates(templates);
  }

  private String text(Path file, String name) throws IOException, UsageException {
    Optional<byte[]> bytes = surroundings.disk().read(file, SizeLimit.WRITTEN);
    if (bytes.isEmpty()) {
      throw new UsageException("the template '" + name + "' is " + SizeLimit.WRITTEN.exceeded());
    }
    return Utf8.text(bytes.get())
        .orElseThrow(() -> new UsageException("the template '" + name + "' is not in UTF-8"));
  }

  /** Not one of the hidden files that a desktop leaves behind. */
  private static boolean named(Path file) {
    return !file.getFileName().toString().startsWith(".");
  }

  LocalDate day(Asked asked) {
    return asked.on(surroundings);
  }

  Progress progress() {
    return Progress.on(console, surroundings.terminal());
  }

  /** Prints the outcome in the form that was asked for, and answers its exit code. */
  ExitCode close(Asked asked, Outcome outcome) {
    switch (asked.format()) {
      case TEXT -> new OutcomeText(console).print(outcome);
      case JSON -> console.result(OutcomeJson.of(outcome));
    }
    return outcome.exitCode();
  }
}
