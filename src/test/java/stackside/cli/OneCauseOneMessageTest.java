package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.ContentEdit;
import stackside.content.ReadingFaults;
import stackside.derive.edition.Register;
import stackside.publish.LocalDisk;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * What cannot be read is told of once, and nothing else because of it: no record that would be
 * gone, nothing that would have been changed since it was signed, nothing that was never read or
 * measured. The demonstration with its ledger and its last issue is judged before and after one
 * mistake.
 */
final class OneCauseOneMessageTest {
  private static final Path CONTENT = Path.of("content");
  private static final Path SITE = Path.of("site");
  private static final Path MISTAKES = Path.of("src/test/resources/mistakes");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 26);
  private static final byte LATIN_1 = (byte) 0xE9;

  private static Map<String, byte[]> files = Map.of();
  private static List<Problem> problemsBefore = List.of();
  private static List<String> mattersBefore = List.of();

  @TempDir private Path folder;

  /** One slip: the bytes of the files that it changes. */
  record Slip(String name, Map<String, byte[]> changed) {
    @Override
    public String toString() {
      return name;
    }
  }

  @BeforeAll
  static void judgeWithoutMistake(@TempDir Path untouched) throws IOException {
    CheckedContent before = judged(untouched, new Slip("none", Map.of()));
    problemsBefore = before.problems();
    mattersBefore = matters(before);
  }

  private static CheckedContent judged(Path folder, Slip slip) throws IOException {
    Map<String, byte[]> all = new TreeMap<>(demonstration());
    all.putAll(slip.changed());
    for (Map.Entry<String, byte[]> file : all.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    LocalDisk disk = new LocalDisk();
    CheckedContent judged = CheckedContent.of(folder, disk, DAY, DAY);
    try {
      Register register = RegisterFile.beside(disk, SITE).orElseThrow();
      return new LastIssue(register, SITE).compared(judged);
    } catch (UsageException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> matters(CheckedContent judged) {
    return judged.matters().stream().map(each -> each.about() + " " + each.basis()).toList();
  }

  private static Map<String, byte[]> demonstration() throws IOException {
    if (files.isEmpty()) {
      Map<String, byte[]> read = new TreeMap<>();
      try (Stream<Path> walk = Files.walk(CONTENT)) {
        for (Path file : walk.filter(Files::isRegularFile).toList()) {
          read.put(CONTENT.relativize(file).toString(), Files.readAllBytes(file));
        }
      }
      files = Map.copyOf(read);
    }
    return files;
  }

  static List<Slip> slips() throws IOException {
    List<Slip> slips = new ArrayList<>(written());
    for (String sheet :
        List.of("assets.csv", "output-checks.csv", "program-readings.csv", "service-events.csv")) {
      slips.add(slip("tabs", sheet, text -> text.replace(',', '\t')));
      slips.add(slip("semicolons", sheet, text -> text.replace(',', ';')));
      slips.add(
          slip(
              "semicolons in the rows",
              sheet,
              text -> below(text, rows -> rows.replace(',', ';'))));
      slips.add(slip("pasted twice", sheet, text -> text + text));
      slips.add(slip("rows pasted often", sheet, text -> below(text, rows -> rows.repeat(100))));
    }
    Set<String> folders = new HashSet<>();
    for (Slip slip : wrongBytes()) {
      String file = slip.changed().keySet().iterator().next();
      if (folders.add(file.replaceFirst("/.*", "/"))) {
        slips.add(slip);
      }
    }
    return slips;
  }

  /** A byte of another encoding, in each file of the demonstration in turn. */
  static List<Slip> wrongBytes() throws IOException {
    List<Slip> slips = new ArrayList<>();
    for (String file : new TreeMap<>(demonstration()).keySet()) {
      if (!file.startsWith("approv") && !file.equals("README.md")) {
        slips.add(wrongByte(file));
      }
    }
    return slips;
  }

  private static String below(String sheet, UnaryOperator<String> change) {
    int header = sheet.indexOf('\n') + 1;
    return sheet.substring(0, header) + change.apply(sheet.substring(header));
  }

  private static Slip slip(String name, String file, UnaryOperator<String> change)
      throws IOException {
    String text = new String(demonstration().getOrDefault(file, new byte[0]), UTF_8);
    return new Slip(name + " in " + file, Map.of(file, change.apply(text).getBytes(UTF_8)));
  }

  private static Slip wrongByte(String file) throws IOException {
    byte[] bytes = demonstration().getOrDefault(file, new byte[0]).clone();
    bytes[bytes.length - 2] = LATIN_1;
    return new Slip("a byte of another encoding in " + file, Map.of(file, bytes));
  }

  /** The written mistakes that keep something from being read. */
  private static List<Slip> written() throws IOException {
    Map<String, List<String>> lines = new TreeMap<>();
    demonstration()
        .forEach((name, bytes) -> lines.put(name, new String(bytes, UTF_8).lines().toList()));
    List<Slip> slips = new ArrayList<>();
    try (Stream<Path> edits = Files.list(MISTAKES)) {
      for (Path edit : edits.sorted().toList()) {
        String text = Files.readString(edit);
        if (ReadingFaults.all().stream()
            .map(Fault::id)
            .anyMatch(id -> text.contains("[" + id + "]"))) {
          Map<String, byte[]> changed = new TreeMap<>();
          ContentEdit.apply(lines, text.substring(text.indexOf("=== ")))
              .files()
              .forEach(
                  (name, after) -> {
                    if (!after.equals(lines.get(name))) {
                      changed.put(name, (String.join("\n", after) + "\n").getBytes(UTF_8));
                    }
                  });
          slips.add(new Slip(String.valueOf(edit.getFileName()), changed));
        }
      }
    }
    return slips;
  }

  @ParameterizedTest
  @MethodSource("wrongBytes")
  @Tag("thorough")
  void aWrongByteInAnyFile_isToldOnceAndNothingBecauseOfIt(Slip slip) throws IOException {
    isToldOnceAndNothingBecauseOfIt(slip);
  }

  @ParameterizedTest
  @MethodSource("slips")
  void isToldOnceAndNothingBecauseOfIt(Slip slip) throws IOException {
    CheckedContent after = judged(folder, slip);
    assertThat(after.problems().stream().filter(each -> !problemsBefore.contains(each)))
        .as("new problems")
        .hasSize(1)
        .allMatch(ErrorScope::isUnread);
    assertThat(matters(after).stream().filter(each -> !mattersBefore.contains(each)))
        .as("new matters of standing")
        .isEmpty();
    assertThat(after.notJudged()).as("what is not judged").hasSizeLessThanOrEqualTo(2);
  }
}
