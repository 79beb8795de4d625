package stackside.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.Problem;

/** Reads a content folder into the unit that it describes. */
public final class ContentReader {
  private ContentReader() {}

  /**
   * Reads the folder. Mistakes of the authors are problems of the reading, never exceptions.
   *
   * @throws IOException if the disk fails
   */
  public static Reading read(Path folder) throws IOException {
    return read(folder, Optional.empty());
  }

  /**
   * Reads the folder, with templates from another place instead of its own.
   *
   * @throws IOException if the disk fails
   */
  public static Reading read(Path folder, Optional<Path> templates) throws IOException {
    Findings findings = new Findings();
    ContentFolder content = ContentFolder.read(folder, templates, findings);
    if (!content.has(Layout.UNIT)) {
      findings.add(noUnit(folder));
    }
    UnitAssembly assembly = new UnitAssembly(content, findings);
    Optional<Unit> unit = assembly.assemble();
    return new Reading(unit, findings.sorted(), content.sources(), assembly.records());
  }

  private static Problem noUnit(Path folder) {
    String shown = Quote.of(folder.toString());
    return ReadingFaults.NO_CONTENT
        .at(
            Location.startOf(Layout.UNIT),
            Files.isDirectory(folder)
                ? "the folder " + shown + " holds no file '" + Layout.UNIT + "'"
                : "there is no folder " + shown)
        .help("name the folder that holds a unit's content, or begin one with 'stackside start'");
  }
}
