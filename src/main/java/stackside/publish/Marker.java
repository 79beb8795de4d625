package stackside.publish;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The file that says that Stackside made a folder, and which files it put there. A folder without
 * it, or with files that it does not name, is somebody's own.
 *
 * @param paths the files of the folder, without the marker itself
 */
record Marker(Set<String> paths) {
  static final String NAME = ".stackside";

  private static final String FIRST =
      "Stackside made this folder and replaces all of it at each build. Keep nothing of your own here.";
  private static final String FORMAT = "format 1";

  Marker {
    paths = Set.copyOf(paths);
  }

  static byte[] bytes(Collection<String> paths) {
    String list = paths.stream().sorted().map(path -> path + "\n").collect(Collectors.joining());
    return (FIRST + "\n" + FORMAT + "\n" + list).getBytes(StandardCharsets.UTF_8);
  }

  /** Reads a marker; absent if it is damaged or of a format that is not known. */
  static Optional<Marker> read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Set<String> lines = new TreeSet<>();
    text.lines().skip(2).forEach(lines::add);
    return text.startsWith(FIRST + "\n" + FORMAT + "\n") && text.endsWith("\n")
        ? Optional.of(new Marker(lines))
        : Optional.empty();
  }
}
