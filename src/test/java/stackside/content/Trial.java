package stackside.content;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import stackside.Units;
import stackside.source.Problem;

/**
 * A content folder in memory for one test: the unit {@code bare} and what the test writes into it.
 */
final class Trial {
  static final String MACHINE_FILE = "machines/cordgrass.yaml";
  static final String MACHINE =
      """
      id: cordgrass
      name: Cordgrass
      software: ["2.1"]
      load-range: 50 ohm to 2000 ohm
      monitor: none
      sockets:
        - {id: mono-1, label: "1", name: Monopolar, place: row 1 column 1, kind: monopolar}
      selects-socket: fixed
      modes:
        - {id: cut, name: Cut, pedal: cut, kind: monopolar, current: cut, waveform: continuous, power-limit: 10 W to 90 W in steps of 5 W}
      """;
  static final String DRILL_FILE = "drills/no-effect.yaml";
  static final String DRILL =
      """
      id: no-effect
      title: No effect
      sign: {tone: usual}
      make-safe: Foot off.
      checks: [{do: Look at the plug}]
      escalate: yes
      """;
  static final String SITES =
      """
      sites: [{id: caecum, name: Caecum, tract: lower, wall: thin}]
      """;
  static final String LESIONS =
      """
      steps: [{id: resection, name: Resection}]
      lesions: [{id: flat, name: Flat, steps: [resection]}]
      """;
  static final String ASSETS =
      """
      asset,machine,software,status,since
      EQ-0417,cordgrass,2.1,in use,2024-05-02
      """;

  private final Path folder;

  private Trial(Path folder) {
    this.folder = folder;
  }

  /** A folder with nothing in it. */
  static Trial empty() {
    return new Trial(create(Jimfs.newFileSystem(Configuration.unix()).getPath("/unit")));
  }

  /** A folder with {@code unit.yaml} alone. */
  static Trial bare() {
    return empty().with("unit.yaml", unitFile());
  }

  static String unitFile() {
    try {
      return Files.readString(Units.folder("bare").resolve("unit.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The bare unit with a machine that says something else in one place. */
  static Trial machine(String says, String instead) {
    return bare().with(MACHINE_FILE, MACHINE.replace(says, instead));
  }

  /** The bare unit with a drill that says something else in one place. */
  static Trial drill(String says, String instead) {
    return bare().with(DRILL_FILE, DRILL.replace(says, instead));
  }

  /** The bare unit with these instruments. */
  static Trial instruments(String yaml) {
    return bare().with("instruments.yaml", yaml);
  }

  /** The bare unit with a machine and this sheet of assets. */
  static Trial assets(String csv) {
    return bare().with(MACHINE_FILE, MACHINE).with("assets.csv", csv);
  }

  /** The bare unit with a machine, a site, a lesion and its step. */
  static Trial withMachine() {
    return bare()
        .with(MACHINE_FILE, MACHINE)
        .with("sites.yaml", SITES)
        .with("lesions.yaml", LESIONS);
  }

  Trial with(String name, String text) {
    return with(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Trial with(String name, byte[] bytes) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path folder() {
    return folder;
  }

  Reading read() {
    return Units.reading(folder);
  }

  /** Each problem in one line: place, length, message, fault, notes, help. */
  List<String> problems() {
    return read().problems().stream().map(Trial::line).toList();
  }

  /** The messages of the problems alone. */
  List<String> messages() {
    return read().problems().stream().map(Problem::message).toList();
  }

  private static String line(Problem problem) {
    String notes =
        problem.notes().stream()
            .map(note -> " (" + note.message() + ": " + note.at() + ")")
            .collect(Collectors.joining());
    return problem.at()
        + "+"
        + problem.at().length()
        + ": "
        + problem.message()
        + " ["
        + problem.fault().id()
        + "]"
        + notes
        + problem.help().map(help -> " | " + help).orElse("");
  }

  private static Path create(Path path) {
    try {
      return Files.createDirectories(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
