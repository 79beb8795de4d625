package stackside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import stackside.content.ContentReader;
import stackside.model.Unit;
import stackside.publish.Disk;
import stackside.render.OutputFile;
import stackside.source.SizeLimit;

/**
 * The {@code unit.yaml} that an issue was made with, kept in the site folder. What must be done at
 * night, whatever state the content is in, finds the unit's name, language and roles here.
 */
final class KeptUnit {
  private static final String UNIT = "unit.yaml";
  private static final String KEPT = "issued/" + UNIT;

  private KeptUnit() {}

  /** The file that an issue keeps. */
  static OutputFile of(Disk disk, Path content) throws IOException {
    return disk.read(content.resolve(UNIT), SizeLimit.WRITTEN)
        .map(bytes -> new OutputFile(KEPT, bytes))
        .orElseThrow(() -> new IOException("somebody changed " + UNIT + " just now"));
  }

  /** The unit as it was issued, with nothing in it but itself. */
  static Unit in(SortedMap<String, OutputFile> files) throws IOException, UsageException {
    OutputFile kept = files.get(KEPT);
    if (kept == null) {
      throw new UsageException(
          "the site folder lacks its file " + KEPT + "; bring the folder back from a copy");
    }
    Path folder = Files.createTempDirectory("stackside-");
    try {
      Files.write(folder.resolve(UNIT), kept.bytes());
      return ContentReader.read(folder)
          .unit()
          .orElseThrow(
              () ->
                  new UsageException(
                      "the file " + KEPT + " of the site folder is damaged; bring it back"));
    } finally {
      Files.deleteIfExists(folder.resolve(UNIT));
      Files.deleteIfExists(folder);
    }
  }
}
