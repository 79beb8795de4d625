package stackside.rules;

import static java.util.stream.Collectors.toCollection;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The fixtures of the rules, a folder a rule. Each is a small edit: under {@code rules/} of the
 * unit {@code base}, under {@code card-rules/} of the unit {@code cards}.
 */
final class Fixtures {

  static final Path OF_CONTENT = Path.of("src/test/resources/rules");
  static final Path OF_CARDS = Path.of("src/test/resources/card-rules");

  private static final Pattern EXPECTED = Pattern.compile("# expect: (?<ids>.*)");

  private Fixtures() {}

  /** Every fixture under one of the two, by path. */
  static List<Path> all(Path root) {
    return folders(root).flatMap(folder -> list(folder).stream()).toList();
  }

  /** The fixtures of the rule of this id, none if it has no folder. */
  static List<Path> of(Path root, String id) {
    Path folder = root.resolve(id);
    return Files.isDirectory(folder) ? list(folder) : List.of();
  }

  /** The ids of the rules that have a folder. */
  static List<String> ids(Path root) {
    return folders(root).map(Fixtures::name).toList();
  }

  /** The ids that a fixture expects somewhere. */
  static Set<String> expects(Path fixture) {
    return EXPECTED
        .matcher(text(fixture))
        .results()
        .map(MatchResult::group)
        .map(mark -> mark.substring(mark.indexOf(':') + 1))
        .flatMap(ids -> Arrays.stream(ids.split(",", -1)))
        .map(String::strip)
        .collect(toCollection(TreeSet::new));
  }

  static boolean fires(Path fixture) {
    return name(fixture).startsWith("fires-");
  }

  static String name(Path file) {
    return file.getFileName().toString();
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<Path> folders(Path root) {
    return list(root).stream().filter(Files::isDirectory);
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
