package stackside.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Broken files kept under {@code src/test/resources/hostile}, written by hand or found by a fuzzer.
 * Each is tried in every place where a file with its extension may be, and in one of them within a
 * complete unit.
 */
final class Corpus {
  private static final Path FOLDER = Path.of("src/test/resources/hostile");

  private Corpus() {}

  static List<Path> files() {
    try (Stream<Path> walk = Files.walk(FOLDER)) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    for (Path file : files()) {
      String name = file.getFileName().toString();
      String ending = name.substring(name.lastIndexOf('.') + 1);
      List<String> places = Ground.places(ending);
      places.forEach(place -> inputs.add(input(file, place, Ground.Kind.BARE)));
      String one = places.get(inputs.size() % places.size());
      inputs.add(input(file, one, Ground.Kind.ONE_GENERATOR));
    }
    return inputs;
  }

  private static Input input(Path file, String place, Ground.Kind ground) {
    return new Input(
        "corpus",
        FOLDER.relativize(file) + " as " + place,
        ground,
        () -> new TreeMap<>(Map.of(place, bytes(file))));
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
