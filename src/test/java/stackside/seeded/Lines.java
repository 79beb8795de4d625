package stackside.seeded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.ConnectorId;
import stackside.model.LampId;
import stackside.model.ThingId;
import stackside.source.Location;

/** The text of a content folder, line by line. */
record Lines(Map<String, List<String>> files) {

  static Lines of(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      Map<String, List<String>> files = new TreeMap<>();
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllLines(file));
      }
      return new Lines(files);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<String> of(String file) {
    return files.get(file);
  }

  String line(Location at) {
    return of(at.file()).get(at.line() - 1);
  }

  String text(Location at) {
    return line(at).substring(at.column() - 1, at.column() - 1 + at.length());
  }

  /**
   * A spot whose place covers exactly its own text; an id is somewhere in the group of keys that it
   * names.
   */
  Spot exact(Spot spot) {
    String slug = slug(spot.value());
    if (slug.isEmpty() || spot.at().length() == 0) {
      return spot;
    }
    String line = line(spot.at());
    Matcher id =
        Pattern.compile("(?<![a-z0-9/-])" + Pattern.quote(slug) + "(?![a-z0-9/-])").matcher(line);
    return id.find(spot.at().column() - 1)
        ? new Spot(
            spot.component(),
            spot.value(),
            new Location(spot.at().file(), spot.at().line(), id.start() + 1, slug.length()))
        : spot;
  }

  private static String slug(Object value) {
    if (value instanceof ThingId id) {
      return id.local();
    }
    return value instanceof ConnectorId || value instanceof LampId ? value.toString() : "";
  }
}
