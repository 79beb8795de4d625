package stackside.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stackside.source.Sources;

/** Reads a content folder into the unit that it describes. */
public final class ContentReader {
  private ContentReader() {}

  /**
   * Reads the folder. Mistakes of the authors are problems of the reading, never exceptions.
   *
   * @throws IOException if the disk fails
   */
  public static Reading read(Path folder) throws IOException {
    return new Reading(Optional.empty(), List.of(), Sources.of(List.of()));
  }
}
