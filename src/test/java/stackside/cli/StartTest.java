package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.content.Chapters;
import stackside.content.ContentReader;
import stackside.source.Problem;

/**
 * What {@code start} writes: nothing is wrong with it but the places to fill, and each is named.
 */
final class StartTest {

  private static final String PLACE = "FILL-IN";
  private static final Pattern KEY = Pattern.compile("'([a-z-]+)' is still to be filled in");

  /** Something that fits, by key; invented, like all that is tested with. */
  private static final Map<String, String> FILLED =
      Map.ofEntries(
          Map.entry("software", "\"1.0\""),
          Map.entry("since", "2026-01-05"),
          Map.entry("rated-voltage", "1000 V peak"),
          Map.entry("area", "split"),
          Map.entry("patients", "any"),
          Map.entry("heating-factor", "20 A2s"),
          Map.entry("single-use", "yes"),
          Map.entry("load-range", "50 ohm to 2000 ohm"),
          Map.entry("monitor", "none"),
          Map.entry("senses-plug", "no"),
          Map.entry("selects-socket", "fixed"),
          Map.entry("pedal", "coagulation"),
          Map.entry("current", "soft-coagulation"),
          Map.entry("waveform", "continuous"),
          Map.entry("power-limit", "5 W to 50 W in steps of 5 W"),
          Map.entry("rated-load", "100 ohm"),
          Map.entry("peak-voltage", "150 V peak"),
          Map.entry("crest-factor", "1.4"),
          Map.entry("wall", "medium"),
          Map.entry("address", "https://unit.example/"),
          Map.entry("near", "600 mm"),
          Map.entry("far", "1200 mm"),
          Map.entry("weight", "any"),
          Map.entry("profile", "6 months"),
          Map.entry("machine", "6 months"),
          Map.entry("drill", "6 months"),
          Map.entry("checklist", "6 months"),
          Map.entry("room", "6 months"),
          Map.entry("asset", "6 months"),
          Map.entry("sources", "6 months"),
          Map.entry("policies", "6 months"),
          Map.entry("tolerance", "15 percent"),
          Map.entry("above", "10 percent of rated power"),
          Map.entry("every", "6 months"));

  @TempDir Path folder;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(Path target) {
    return new Cli(new ByteArrayOutputStream(), err).run("start", target.toString());
  }

  private Path started() {
    Path target = folder.resolve("new unit");
    assertThat(run(target)).isZero();
    return target;
  }

  @Test
  void placesToFillAreNamedAndNothingElseIsWrong() throws IOException {
    Path target = started();
    List<String> named = new ArrayList<>();
    for (Problem problem : ContentReader.read(target).problems()) {
      assertThat(problem.fault().id()).as(problem.toString()).isEqualTo("place-to-fill");
      named.add(problem.at().toString());
    }
    assertThat(named).containsExactlyInAnyOrderElementsOf(placesIn(target)).hasSizeGreaterThan(40);
  }

  private static List<String> placesIn(Path target) throws IOException {
    List<String> places = new ArrayList<>();
    for (Path file : contentFiles(target)) {
      List<String> lines = Files.readAllLines(file);
      for (int i = 0; i < lines.size(); i++) {
        Matcher place =
            Pattern.compile("\"?" + PLACE).matcher(lines.get(i).replaceFirst("# .*", ""));
        while (place.find()) {
          places.add(target.relativize(file) + ":" + (i + 1) + ":" + (place.start() + 1));
        }
      }
    }
    return places;
  }

  private static List<Path> contentFiles(Path target) throws IOException {
    try (Stream<Path> walk = Files.walk(target)) {
      return walk.filter(Files::isRegularFile).filter(f -> !f.endsWith("README.md")).toList();
    }
  }

  @Test
  void filledInItReadsWithoutAProblem() throws IOException {
    Path target = started();
    for (Problem problem : ContentReader.read(target).problems()) {
      fill(target.resolve(problem.at().file()), problem);
    }
    assertThat(ContentReader.read(target).problems()).isEmpty();
    assertThat(ContentReader.read(target).unit()).isPresent();
  }

  /** Every place of a line is filled from its end, so that the columns before it stay true. */
  private static void fill(Path file, Problem problem) throws IOException {
    Matcher key = KEY.matcher(problem.message());
    assertThat(key.find()).isTrue();
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    int index = problem.at().line() - 1;
    String line = lines.get(index);
    int place = line.indexOf(PLACE);
    String value = FILLED.getOrDefault(key.group(1), "Something at " + place);
    boolean quoted = place > 0 && line.charAt(place - 1) == '"';
    String plain = quoted ? value.replace("\"", "") : value;
    lines.set(index, line.substring(0, place) + plain + line.substring(place + PLACE.length()));
    Files.write(file, lines);
  }

  @Test
  void everyFileOfTheListIsThereAndNoOther() throws IOException {
    Path resources = Path.of("src/main/resources/stackside/start");
    try (Stream<Path> walk = Files.walk(resources)) {
      assertThat(
              walk.filter(Files::isRegularFile)
                  .map(file -> resources.relativize(file).toString())
                  .filter(file -> !file.equals("files.txt")))
          .containsExactlyInAnyOrderElementsOf(
              StartCommand.files().stream()
                  .map(file -> file.path())
                  .filter(file -> !file.startsWith("chapters/"))
                  .toList());
    }
  }

  @Test
  void everyChapterIsTakenOverWithoutRemarks() throws IOException {
    assertThat(StartCommand.files())
        .filteredOn(file -> file.path().startsWith("chapters/"))
        .hasSize(Chapters.names().size())
        .allSatisfy(file -> assertThat(file.bytes()).isEmpty());
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Path target = Files.createDirectory(folder.resolve("mine"));
    Files.writeString(target.resolve("unit.yaml"), "mine");
    assertThat(run(target)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("left unchanged; name a new folder");
    assertThat(target.resolve("unit.yaml")).hasContent("mine");
    assertThat(target.resolve("README.md")).doesNotExist();
  }

  @Test
  void emptyFolderIsFilled() throws IOException {
    assertThat(run(Files.createDirectory(folder.resolve("empty")))).isZero();
    assertThat(folder.resolve("empty/unit.yaml")).exists();
  }
}
