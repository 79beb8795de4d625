package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A valid content folder on disk, into which hostile inputs are put one after the other. */
final class Ground {

  /** How much content surrounds a hostile file, which determines how long checking takes. */
  enum Kind {
    /** Only {@code unit.yaml}. */
    BARE,
    /** What the demonstration says about one generator. */
    ONE_GENERATOR,
    DEMONSTRATION
  }

  private static final Path CONTENT = Path.of("content");
  private static final String GENERATOR = "restharrow";
  private static final String ASSET = "EQ-0602";

  private final Path folder;
  private final SortedMap<String, String> sound;

  private Ground(Path folder, SortedMap<String, String> sound) {
    this.folder = folder;
    this.sound = sound;
  }

  static Ground in(Path folder, Kind kind) throws IOException {
    Ground ground = new Ground(folder, files(kind));
    for (var file : ground.sound.entrySet()) {
      ground.write(file.getKey(), file.getValue().getBytes(UTF_8));
    }
    return ground;
  }

  Path folder() {
    return folder;
  }

  /** The texts of a folder, without signed ones. */
  static SortedMap<String, String> files(Kind kind) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(CONTENT)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        String name = CONTENT.relativize(file).toString().replace('\\', '/');
        if (isIn(name, kind)) {
          String text = Files.readString(file);
          files.put(name, kind == Kind.ONE_GENERATOR ? ofOneGenerator(name, text) : text);
        }
      }
    }
    return files;
  }

  private static boolean isIn(String name, Kind kind) {
    return switch (kind) {
      case BARE -> name.equals("unit.yaml");
      case DEMONSTRATION -> !name.startsWith("approv");
      case ONE_GENERATOR -> !name.startsWith("approv") && isOfOneGenerator(name);
    };
  }

  private static boolean isOfOneGenerator(String name) {
    if (name.startsWith("machines/") || name.startsWith("profiles/") || name.contains("/set-up-")) {
      return name.contains(GENERATOR);
    }
    if (name.startsWith("handbook/")) {
      return name.contains("argon") || name.contains("waveforms");
    }
    return !name.startsWith("rooms/") || name.equals("rooms/room-3.yaml");
  }

  private static String ofOneGenerator(String name, String text) {
    if (name.endsWith(".csv")) {
      return text.lines()
          .filter(line -> line.startsWith("asset,") || line.startsWith(ASSET))
          .collect(Collectors.joining("\n", "", "\n"));
    }
    return name.equals("rooms/room-3.yaml") ? text.replaceAll("EQ-04\\d\\d, ", "") : text;
  }

  void lay(SortedMap<String, byte[]> files) throws IOException {
    for (var file : files.entrySet()) {
      write(file.getKey(), file.getValue());
    }
  }

  /** Removes the files of an input again. */
  void restore(SortedMap<String, byte[]> files) throws IOException {
    for (String name : files.keySet()) {
      String before = sound.get(name);
      if (before == null) {
        Files.delete(folder.resolve(name));
      } else {
        write(name, before.getBytes(UTF_8));
      }
    }
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  /** Where a file with this extension may be, one place of each kind. */
  static List<String> places(String ending) {
    return switch (ending) {
      case "yaml" ->
          List.of(
              "unit.yaml",
              "machines/a.yaml",
              "rooms/a.yaml",
              "profiles/a.yaml",
              "checklists/a.yaml",
              "drills/a.yaml",
              "paths/a.yaml",
              "instruments.yaml",
              "cables.yaml",
              "electrodes.yaml",
              "foot-switches.yaml",
              "sites.yaml",
              "lesions.yaml",
              "sources.yaml");
      case "csv" ->
          List.of(
              "assets.csv",
              "program-readings.csv",
              "service-events.csv",
              "output-checks.csv",
              "approvals.csv");
      case "md" -> List.of("handbook/a.md");
      case "json" -> List.of("approved/a.json");
      default -> throw new IllegalArgumentException(ending);
    };
  }
}
