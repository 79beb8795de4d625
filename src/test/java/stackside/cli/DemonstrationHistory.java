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
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stackside.derive.signed.Ledger;
import stackside.publish.HastyDisk;

/**
 * Makes the record of the demonstration anew: its ledger, what was signed, its site. The content is
 * taken back to where it began, and its history is lived through again with the real commands, so
 * that it ends with the content as it stands.
 */
final class DemonstrationHistory {
  private static final Path HISTORY = Path.of("src/test/resources/demonstration-history.txt");
  private static final String APPROVED = "approved";

  /** Who signs, in the order in which they do. */
  private static final Map<String, String> INITIALS = new LinkedHashMap<>();

  static {
    INITIALS.put("lead-nurse", "KM");
    INITIALS.put("lead-endoscopist", "TO");
    INITIALS.put("medical-physics", "AP");
  }

  private final Path folder;
  private final Path content;
  private boolean issued;

  private DemonstrationHistory(Path folder) {
    this.folder = folder;
    this.content = folder.resolve("content");
  }

  /** One thing done on one day, with what was edited before it. */
  private record Step(String day, String deed, String words, List<Edit> edits) {}

  /** What the content said until then, and what it says since. */
  private record Edit(String before, String since) {}

  /**
   * Lives through the history in a folder of its own, then puts what it left in place of the record
   * that lies in the working folder.
   */
  static void makeAnew(Path folder) throws IOException {
    DemonstrationHistory history = new DemonstrationHistory(folder);
    Office.copy(Path.of("content"), history.content);
    Files.deleteIfExists(history.content.resolve(Ledger.FILE));
    delete(history.content.resolve(APPROVED));
    history.live(steps());
    putInPlace(folder);
  }

  private void live(List<Step> steps) throws IOException {
    Map<Path, String> last = texts();
    for (int i = steps.size() - 1; i >= 0; i--) {
      for (Edit edit : steps.get(i).edits()) {
        replace(edit.since(), edit.before());
      }
    }
    for (Step step : steps) {
      for (Edit edit : step.edits()) {
        replace(edit.before(), edit.since());
      }
      act(step);
    }
    assertThat(texts()).as("the content at the end of its history").containsAllEntriesOf(last);
  }

  private void act(Step step) {
    switch (step.deed()) {
      case "issue" -> {
        INITIALS.keySet().forEach(role -> sign(role, step.day()));
        issue(step.day());
      }
      case "withdraw" -> decided("withdraw", step);
      case "lift" -> {
        decided("lift", step);
        issue(step.day());
      }
      default -> throw new AssertionError("nobody knows how to '" + step.deed() + "'");
    }
  }

  private void sign(String role, String day) {
    run(day, "approve", "--role", role, "--initials", INITIALS.get(role));
  }

  private void issue(String day) {
    if (issued) {
      run(day, "issue");
    } else {
      run(day, "issue", "--first");
    }
    issued = true;
  }

  private void decided(String command, Step step) {
    List<String> words = Arrays.stream(step.words().split("\\|", -1)).map(String::strip).toList();
    run(
        step.day(),
        command,
        words.get(0),
        "--role",
        words.get(1),
        "--initials",
        words.get(2),
        "--reason",
        words.get(3));
  }

  private void run(String day, String... arguments) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    Environment surroundings =
        new Environment(
            folder,
            () -> LocalDate.parse(day),
            new HastyDisk(),
            Environment.Audience.TERMINAL,
            new ByteArrayInputStream("yes\n".repeat(500).getBytes(UTF_8)));
    int code = new Cli(told, told, surroundings).run(arguments);
    assertThat(code).as(day + " " + List.of(arguments) + "\n" + told.toString(UTF_8)).isZero();
  }

  private void replace(String now, String then) throws IOException {
    int found = 0;
    for (Map.Entry<Path, String> file : texts().entrySet()) {
      if (file.getValue().contains(now)) {
        found++;
        Files.writeString(file.getKey(), file.getValue().replace(now, then));
      }
    }
    assertThat(found).as("files of the content that say '%s'", now).isPositive();
  }

  /** The files of the content, without the record of what was signed. */
  private Map<Path, String> texts() throws IOException {
    Map<Path, String> texts = new LinkedHashMap<>();
    try (Stream<Path> walk = Files.walk(content)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        Path name = content.relativize(file);
        if (!name.startsWith(APPROVED) && !name.startsWith(Ledger.FILE)) {
          texts.put(file, Files.readString(file));
        }
      }
    }
    return texts;
  }

  /** Puts the record that was made in a folder in place of the one that lies here. */
  static void putInPlace(Path folder) throws IOException {
    Path content = folder.resolve("content");
    Path here = Path.of("content");
    delete(here.resolve(APPROVED));
    delete(Path.of("site"));
    Files.deleteIfExists(here.resolve(Ledger.FILE));
    Files.copy(content.resolve(Ledger.FILE), here.resolve(Ledger.FILE));
    Office.copy(content.resolve(APPROVED), here.resolve(APPROVED));
    Office.copy(folder.resolve("site"), Path.of("site"));
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      SmallOffice.delete(folder);
    }
  }

  private static List<Step> steps() throws IOException {
    List<Step> steps = new ArrayList<>();
    String before = "";
    for (String line : Files.readAllLines(HISTORY)) {
      if (line.startsWith("- ")) {
        before = line.substring(2);
      } else if (line.startsWith("+ ")) {
        steps.get(steps.size() - 1).edits().add(new Edit(before, line.substring(2)));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        String[] words = line.split(" ", 3);
        steps.add(
            new Step(words[0], words[1], words.length < 3 ? "" : words[2], new ArrayList<>()));
      }
    }
    return steps;
  }
}
