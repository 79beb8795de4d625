package stackside.generate;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.content.ContentReader;
import stackside.model.Unit;

/**
 * A content folder several times as large as the demonstration, with the same structure. Every
 * hospital, room, generator, profile, drill and page of its own is repeated once per part under a
 * new name. Anatomy, lesions, sources and the chapters of the program stay the same. The seed
 * varies what each room offers, how far limits are set, the number of copies and the telephone
 * numbers.
 */
public record GeneratedUnit(SortedMap<String, String> files) {
  private static final Pattern LOCATIONS = Pattern.compile("(?m)^locations:\n((?: .*\n)+)");
  private static final Pattern OWN_NAME =
      Pattern.compile("(?m)^(name|title): (\"?)([^\"\n]+)(\"?)$");
  private static final Pattern LISTED_NAME = Pattern.compile("\\bname: (\"?)([^\",}]+)(\"?)");
  private static final Pattern HEADING = Pattern.compile("(?m)\\A# (.*)$");
  private static final Pattern OWN_ID = Pattern.compile("(?m)^id: (\\S+)$");
  private static final List<String> KIT =
      List.of("cables.yaml", "electrodes.yaml", "foot-switches.yaml", "instruments.yaml");
  private static final List<String> RECORDS =
      List.of("assets.csv", "output-checks.csv", "program-readings.csv", "service-events.csv");
  private static final String CHAPTERS = "chapters/";
  private static final List<String> OF_PROSE = List.of("handbook/", "paths/");

  /** Writes a unit: {@code GeneratedUnit FOLDER TIMES SEED}. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    of(Integer.parseInt(arguments[1]), Long.parseLong(arguments[2])).write(folder);
  }

  /** The demonstration unit, repeated this many times. */
  public static GeneratedUnit of(int times, long seed) throws IOException {
    return of(Path.of("content"), times, seed);
  }

  /** The unit in a folder, repeated this many times. */
  public static GeneratedUnit of(Path folder, int times, long seed) throws IOException {
    if (times < 1 || times > Birds.most()) {
      throw new IllegalArgumentException("1 to " + Birds.most() + " times, not " + times);
    }
    Unit unit = ContentReader.read(folder).unit().orElseThrow();
    SortedMap<String, String> pattern = read(folder);
    SortedMap<String, String> files = new TreeMap<>(pattern);
    Random chance = new Random(seed);
    pattern.replaceAll((name, text) -> text.endsWith("\n") ? text : text + "\n");
    files.putAll(new Variation(chance).in(pattern));
    for (int part = 1; part < times; part++) {
      add(files, new Variation(chance).in(pattern), unit, part);
    }
    return new GeneratedUnit(files);
  }

  private static SortedMap<String, String> read(Path folder) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (!name.startsWith("approv") && !name.equals("README.md")) {
          files.put(name, Files.readString(file));
        }
      }
    }
    return files;
  }

  private static void add(
      SortedMap<String, String> files, SortedMap<String, String> pattern, Unit unit, int part) {
    Renaming renaming = Renaming.of(unit, part);
    String bird = Birds.name(part);
    pattern.forEach(
        (name, text) -> {
          if (name.equals("unit.yaml")) {
            files.merge(name, text, (all, more) -> withLocations(all, more, renaming, bird));
          } else if (KIT.contains(name) && Renaming.startsCatalogue(part)) {
            files.merge(name, renaming.in(listed(text, part)), String::concat);
          } else if (RECORDS.contains(name)) {
            files.merge(name, renaming.in(text.substring(text.indexOf('\n') + 1)), String::concat);
          } else if (name.contains("/")
              && !name.startsWith(CHAPTERS)
              && !text.contains("\nfor: all\n")) {
            addFile(files, name, text, renaming, part);
          }
        });
  }

  private static void addFile(
      SortedMap<String, String> files, String name, String text, Renaming renaming, int part) {
    String folder = name.substring(0, name.indexOf('/') + 1);
    String id = name.substring(folder.length(), name.lastIndexOf('.'));
    String ending = name.substring(name.lastIndexOf('.'));
    boolean prose = OF_PROSE.contains(folder);
    String named =
        OWN_NAME
            .matcher(text)
            .replaceFirst(
                it ->
                    it.group(1)
                        + ": "
                        + it.group(2)
                        + name(folder, it.group(3), part)
                        + it.group(4));
    String headed = HEADING.matcher(named).replaceFirst("# $1, " + Birds.name(part));
    String renamed = renaming.in(headed);
    if (prose) {
      renamed = OWN_ID.matcher(renamed).replaceFirst(it -> "id: " + renaming.ofProse(it.group(1)));
    }
    files.put(folder + (prose ? renaming.ofProse(id) : renaming.id(id)) + ending, renamed);
  }

  /** Hardly longer than the pattern's name wherever it appears on a card. */
  private static String name(String folder, String name, int part) {
    String bird = Birds.name(part);
    return switch (folder) {
      case "rooms/" -> bird + " " + name.replaceFirst("^Room ", "").charAt(0);
      case "drills/", "checklists/" -> name + " " + part;
      case "machines/" -> name.replaceFirst(" .*", "") + " " + part;
      default -> name + " " + bird;
    };
  }

  private static String listed(String text, int part) {
    char catalogue = (char) ('A' + part / Renaming.PARTS_A_CATALOGUE);
    StringBuilder lines = new StringBuilder();
    text.lines()
        .filter(line -> line.startsWith("- "))
        .map(line -> LISTED_NAME.matcher(line).replaceFirst("name: $1$2 " + catalogue + "$3"))
        .forEach(line -> lines.append(line).append('\n'));
    return lines.toString();
  }

  /** "Groyne Infirmary" becomes "Dunlin Infirmary". */
  private static String withLocations(String all, String more, Renaming renaming, String bird) {
    Matcher those = LOCATIONS.matcher(more);
    Matcher these = LOCATIONS.matcher(all);
    if (!those.find() || !these.find()) {
      throw new IllegalStateException("unit.yaml has no list of locations");
    }
    String named = those.group(1).replaceAll("(?m)^(    name: )\\S+", "$1" + bird);
    return all.substring(0, these.end(1)) + renaming.in(named) + all.substring(these.end(1));
  }

  /** Writes the files into a folder, which need not exist. */
  public void write(Path folder) throws IOException {
    for (var file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue(), UTF_8);
    }
  }
}
