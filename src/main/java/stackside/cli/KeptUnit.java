package stackside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.content.ContentReader;
import stackside.model.Unit;
import stackside.publish.Disk;
import stackside.render.OutputFile;
import stackside.source.SizeLimit;

/**
 * The {@code unit.yaml} and the templates that an issue was made with, kept in the site folder.
 * What must be done at night, whatever state the content is in, finds the unit's name, language,
 * roles and look here.
 */
final class KeptUnit {
  private static final String UNIT = "unit.yaml";
  private static final String FOLDER = "issued/";
  private static final String TEMPLATES = FOLDER + "templates/";
  private static final String KEPT = FOLDER + UNIT;

  private KeptUnit() {}

  /** The file that an issue keeps. */
  static OutputFile of(Disk disk, Path content) throws IOException {
    return disk.read(content.resolve(UNIT), SizeLimit.WRITTEN)
        .map(bytes -> new OutputFile(KEPT, bytes))
        .orElseThrow(() -> new IOException("somebody changed " + UNIT + " just now"));
  }

  /** The templates that an issue keeps. */
  static List<OutputFile> templates(Unit unit) {
    return unit.templates().entrySet().stream()
        .map(each -> OutputFile.text(TEMPLATES + each.getKey(), each.getValue()))
        .toList();
  }

  /** The unit as it was issued, with nothing in it but itself. */
  static Unit in(SortedMap<String, OutputFile> files) throws IOException, UsageException {
    OutputFile kept = files.get(KEPT);
    if (kept == null) {
      throw new UsageException(
          "the site folder lacks its file " + KEPT + "; restore the folder from a copy");
    }
    Path folder = Files.createTempDirectory("stackside-");
    try {
      Files.write(folder.resolve(UNIT), kept.bytes());
      for (OutputFile template : files.tailMap(TEMPLATES).values()) {
        if (template.path().startsWith(TEMPLATES)) {
          Path file = folder.resolve(template.path().substring(FOLDER.length()));
          Files.createDirectories(file.getParent());
          Files.write(file, template.bytes());
        }
      }
      return ContentReader.read(folder)
          .unit()
          .orElseThrow(
              () ->
                  new UsageException(
                      "the file " + KEPT + " of the site folder is damaged; bring it back"));
    } finally {
      remove(folder);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** The name of the unit whose issue lies in a folder. */
  static Optional<String> name(Disk disk, Path folder) throws IOException, UsageException {
    Path kept = folder.resolve(KEPT);
    if (disk.at(kept) != Disk.Entry.FILE) {
      return Optional.empty();
    }
    Optional<byte[]> bytes = disk.read(kept, SizeLimit.WRITTEN);
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    SortedMap<String, OutputFile> files = new TreeMap<>();
    files.put(KEPT, new OutputFile(KEPT, bytes.get()));
    return Optional.of(in(files).details().name().value());
  }
}
