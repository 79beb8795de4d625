package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.derive.edition.Register;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.publish.LocalDisk;

/**
 * A folder with the demonstration's content in which commands are run, for tests of signing and
 * issuing. The state after the first issue is made once and copied.
 */
public final class Office {
  static final String SIGNED = "2026-11-20";
  static final String FIRST = "2026-11-21";

  private static final SortedMap<String, String> ROLES =
      new TreeMap<>(Map.of("lead-nurse", "KM", "lead-endoscopist", "TO", "medical-physics", "AP"));

  private static final Path CONTENT = Path.of("content");

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

  /** The demonstration as nobody has signed it. */
  static Office unsigned(Path folder) throws IOException {
    copy(CONTENT, folder.resolve("content"));
    Files.deleteIfExists(folder.resolve("content").resolve(Ledger.FILE));
    if (Files.exists(folder.resolve("content/approved"))) {
      SmallOffice.delete(folder.resolve("content/approved"));
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
    ByteArrayOutputStream problems = new ByteArrayOutputStream();
    Environment surroundings =
        new Environment(
            folder,
            () -> today,
            new LocalDisk(),
            audience,
            new ByteArrayInputStream(answers.getBytes(UTF_8)));
    int code = new Cli(results, problems, surroundings).run(arguments);
    out = results.toString(UTF_8);
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
