package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.publish.Disk;
import stackside.publish.HastyDisk;

/** A folder with a small unit in which commands are run whose disk fails. */
final class SmallOffice {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  /** Who signs in which role. */
  static final SortedMap<String, String> PEOPLE =
      Collections.unmodifiableSortedMap(
          new TreeMap<>(
              Map.of("medical-physics", "CD", "lead-nurse", "EF", "lead-endoscopist", "AB")));

  private static final String CHANGED = "    cold: Cold snare.\n";

  private SmallOffice() {}

  /** What a command answered. */
  record Ended(int code, String out, String err) {
    String told() {
      return "code " + code + ": " + out + err;
    }
  }

  /** A unit that nobody has signed, with all its programs read and outputs measured. */
  static void readyToSign(Path folder) throws IOException {
    Path content = folder.resolve("content");
    Office.copy(Path.of("src/test/resources/units/cholla"), content);
    Files.writeString(
        content.resolve("program-readings.csv"),
        """
        asset,date,slot,shown-as,socket,pedal,mode,level,limit,initials
        EQ-1,2026-02-01,3,EMR R,mono-1,yellow,pulsed-cut,2,60 W,AB
        EQ-1,2026-02-01,3,EMR R,mono-1,blue,brisk,1,40 W,AB
        EQ-1,2026-02-01,4,RECTO,mono-1,yellow,pulsed-cut,2,80 W,AB
        EQ-1,2026-02-01,4,RECTO,mono-1,blue,brisk,1,45 W,AB
        EQ-1,2026-02-01,7,BIPOLAR,bi,yellow,,,,AB
        EQ-1,2026-02-01,7,BIPOLAR,bi,blue,bipolar,low,20 W,AB
        """);
    Files.writeString(
        content.resolve("output-checks.csv"),
        """
        asset,date,mode,level,limit,load,watts,method,initials
        EQ-1,2026-02-01,pulsed-cut,2,60 W,500 ohm,60 W,Analyser,AB
        EQ-1,2026-02-01,brisk,1,40 W,500 ohm,40 W,Analyser,AB
        EQ-1,2026-02-01,bipolar,low,20 W,100 ohm,20 W,Analyser,AB
        """);
  }

  /** Makes a unit that has signed, issued and drafted once and changed a line since. */
  static void issuedAndChanged(Path folder) throws IOException {
    readyToSign(folder);
    Path content = folder.resolve("content");
    for (Map.Entry<String, String> each : PEOPLE.entrySet()) {
      succeeds(folder, "approve", "--role", each.getKey(), "--initials", each.getValue());
    }
    succeeds(folder, "issue", "--first");
    succeeds(folder, "draft");
    Path profiles = content.resolve("profiles/arrowgrass.yaml");
    String text = Files.readString(profiles);
    assertThat(text).contains(CHANGED);
    Files.writeString(
        profiles, text.replace(CHANGED, CHANGED + "    technique: Rinse the cut and look.\n"));
  }

  private static void succeeds(Path folder, String... arguments) {
    Ended ended = run(folder, new HastyDisk(), arguments);
    assertThat(ended.code()).as(ended.told()).isZero();
  }

  static Ended run(Path folder, Disk disk, String... arguments) {
    ByteArrayOutputStream results = new ByteArrayOutputStream();
    ByteArrayOutputStream problems = new ByteArrayOutputStream();
    Environment surroundings =
        new Environment(
            folder,
            () -> DAY,
            disk,
            arguments[0].equals("approve")
                ? Environment.Audience.TERMINAL
                : Environment.Audience.PIPE,
            new ByteArrayInputStream("yes\n".repeat(100).getBytes(UTF_8)));
    int code = new Cli(results, problems, surroundings).run(arguments);
    return new Ended(code, results.toString(UTF_8), problems.toString(UTF_8));
  }

  /** The fingerprint of every file below a folder, without what publishing leaves beside it. */
  static SortedMap<String, Fingerprint> contents(Path folder) throws IOException {
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    if (Files.exists(folder)) {
      try (Stream<Path> walk = Files.walk(folder)) {
        for (Path file : walk.filter(Files::isRegularFile).toList()) {
          files.put(folder.relativize(file).toString(), Fingerprint.of(Files.readAllBytes(file)));
        }
      }
    }
    files.keySet().removeIf(name -> name.contains("stackside-"));
    return files;
  }

  /** A copy whose files are second names: nothing that is kept is ever written into. */
  static void link(Path from, Path to) throws IOException {
    try (Stream<Path> walk = Files.walk(from)) {
      for (Path path : walk.toList()) {
        Path there = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(there);
        } else {
          Files.createLink(there, path);
        }
      }
    }
  }

  static void delete(Path folder) throws IOException {
    List<Path> paths = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      walk.forEach(paths::add);
    }
    for (int i = paths.size() - 1; i >= 0; i--) {
      Files.delete(paths.get(i));
    }
  }
}
