package stackside.publish;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The file that shows that Stackside made a folder, and lists the files it put there. A folder
 * without a marker, or with files that the marker does not list, belongs to somebody else.
 *
 * @param paths the files of the folder, without the marker
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

  /** Reads a marker; absent if it is damaged or its format is unknown. */
  static Optional<Marker> read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Set<String> lines = new TreeSet<>();
    text.lines().skip(2).forEach(lines::add);
    return text.startsWith(FIRST + "\n" + FORMAT + "\n") && text.endsWith("\n")
        ? Optional.of(new Marker(lines))
        : Optional.empty();
  }
}
