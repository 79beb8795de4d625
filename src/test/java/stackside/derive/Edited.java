package stackside.derive;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stackside.ContentEdit;
import stackside.Units;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.model.Kind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/** The tests' base unit after a small edit. See {@link ContentEdit} for the format of edits. */
public final class Edited {
  private Edited() {}

  /** The base unit after an edit; it must be readable without problems. */
  public static Unit base(String patch) {
    Reading reading = reading(patch);
    assertThat(reading.problems()).as(Units.printed(reading)).isEmpty();
    return reading.unit().orElseThrow();
  }

  /** The result of reading the base unit after an edit. */
  public static Reading reading(String patch) {
    try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
      Path folder = memory.getPath("/content");
      for (Map.Entry<String, List<String>> file :
          ContentEdit.apply(files(Units.folder("base")), patch).files().entrySet()) {
        Path target = folder.resolve(file.getKey());
        Files.createDirectories(target.getParent());
        Files.write(target, file.getValue());
      }
      return ContentReader.read(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, List<String>> files(Path folder) throws IOException {
    Map<String, List<String>> files = new LinkedHashMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllLines(file));
      }
    }
    return files;
  }

  public static <T extends Thing> T find(Unit unit, Kind kind, String slug, Class<T> type) {
    return type.cast(unit.find(new ThingId(kind, slug)).orElseThrow());
  }
}
