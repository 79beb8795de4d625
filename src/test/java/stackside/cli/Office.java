package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.publish.HastyDisk;

/**
 * A folder with three rooms of the demonstration in which commands are run, for tests of signing
 * and issuing. The state after the first issue is made once and copied.
 */
public final class Office {
  static final String SIGNED = "2026-11-20";
  static final String FIRST = "2026-11-21";

  private static final SortedMap<String, String> ROLES =
      new TreeMap<>(Map.of("lead-nurse", "KM", "lead-endoscopist", "TO", "medical-physics", "AP"));

  private static final Path CONTENT = Path.of("content");

  /** What belongs to the other rooms alone, to their machine or to reading at leisure. */
  private static final List<String> LEFT_OUT =
      List.of(
          "chapters",
          "handbook",
          "paths",
          "rooms/childrens-room.yaml",
          "rooms/room-1.yaml",
          "rooms/x-ray-room.yaml",
          "machines/sandwort.yaml",
          "profiles/sandwort.yaml",
          "checklists/set-up-sandwort.yaml",
          "drills/socket-alarm.yaml",
          "drills/wrong-effect.yaml",
          "drills/low-tone.yaml");

  private static final List<String> SHEETS =
      List.of("assets.csv", "output-checks.csv", "program-readings.csv", "service-events.csv");
  private static final Pattern OTHER_GENERATOR = Pattern.compile("EQ-(0210|0419|05\\d\\d),.*");

  @SuppressWarnings("NonFinalStaticField") // made once for all tests of a run, then only copied
  private static Path issuedOnce;

  public final Path folder;
  public String out = "";
  public String err = "";

  /** What the clock says. */
  LocalDate today = LocalDate.of(2026, 11, 30);

  private Office(Path folder) {
    this.folder = folder;
  }

  /** One that lies there already. */
  static Office at(Path folder) {
    return new Office(folder);
  }

  /** The three rooms as nobody has signed them. */
  private static Office unsigned(Path folder) throws IOException {
    Path content = folder.resolve("content");
    copy(CONTENT, content);
    for (String gone :
        Stream.concat(Stream.of(Ledger.FILE, "approved"), LEFT_OUT.stream()).toList()) {
      SmallOffice.delete(content.resolve(gone));
    }
    for (String sheet : SHEETS) {
      List<String> rows = Files.readAllLines(content.resolve(sheet));
      Files.write(
          content.resolve(sheet),
          rows.stream().filter(row -> !OTHER_GENERATOR.matcher(row).matches()).toList());
    }
    return new Office(folder);
  }

  /** Everything signed, and everything issued for the first time. */
  public static synchronized Office issued(Path folder) throws IOException {
    if (issuedOnce == null) {
      Path once = Files.createTempDirectory("issued-once");
      Office office = unsigned(once);
      office.signAll(SIGNED);
      assertThat(office.run("issue", "--first", "--on", FIRST)).as(office.told()).isZero();
      issuedOnce = once;
    }
    copy(issuedOnce, folder);
    return new Office(folder);
  }

  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> walk = Files.walk(from)) {
      for (Path path : walk.toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target);
        }
      }
    }
  }

  public int run(String... arguments) {
    return answering("", arguments);
  }

  /** Runs a command that reads these answers; whoever signs sits at a terminal. */
  int answering(String answers, String... arguments) {
    return answering(
        arguments[0].equals("approve") ? Environment.Audience.TERMINAL : Environment.Audience.PIPE,
        answers,
        arguments);
  }

  int answering(Environment.Audience audience, String answers, String... arguments) {
    ByteArrayOutputStream results = new ByteArrayOutputStream();
    int code = answering(results, audience, answers, arguments);
    out = results.toString(UTF_8);
    return code;
  }

  /** Runs a command whose results go elsewhere. */
  int runInto(OutputStream results, String... arguments) {
    return answering(results, Environment.Audience.PIPE, "", arguments);
  }

  private int answering(
      OutputStream results, Environment.Audience audience, String answers, String... arguments) {
    ByteArrayOutputStream problems = new ByteArrayOutputStream();
    Environment surroundings =
        new Environment(
            folder,
            () -> today,
            new HastyDisk(),
            audience,
            new ByteArrayInputStream(answers.getBytes(UTF_8)));
    int code = new Cli(results, problems, surroundings).run(arguments);
    err = problems.toString(UTF_8);
    return code;
  }

  public String told() {
    return err + out;
  }

  public void signAll(String day) {
    ROLES.keySet().forEach(role -> sign(role, day));
  }

  /** One role signs all that is open for it. */
  void sign(String role, String day) {
    answering(
        "yes\n".repeat(500), "approve", "--role", role, "--initials", initials(role), "--on", day);
  }

  static String initials(String role) {
    return ROLES.getOrDefault(role, "");
  }

  Path content(String file) {
    return folder.resolve("content").resolve(file);
  }

  public Path site(String file) {
    return folder.resolve("site").resolve(file);
  }

  String page(String file) throws IOException {
    return Files.readString(site(file));
  }

  /** Replaces the first place where a text stands in a file of the content. */
  public void edit(String file, String before, String after) throws IOException {
    String text = Files.readString(content(file));
    assertThat(text).contains(before);
    int at = text.indexOf(before);
    Files.writeString(
        content(file), text.substring(0, at) + after + text.substring(at + before.length()));
  }

  public Register register() throws Exception {
    return Register.read(page(Register.FILE));
  }

  /** The fingerprint of every file below a folder. */
  SortedMap<String, Fingerprint> bytes(String below) throws IOException {
    Path root = folder.resolve(below);
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(root)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Fingerprint.of(Files.readAllBytes(file)));
      }
    }
    return files;
  }
}
