package stackside.check;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.ContentEdit;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Sources;

/**
 * An edited content folder, read and judged: what tests of rules look at.
 *
 * @param problems of reading and of all rules, sorted
 */
public record CheckedEdit(ContentEdit edit, List<Problem> problems, Sources sources) {

  /** The unit that fixtures of rules edit; it has nothing wrong with it. */
  public static final Path BASE = Path.of("src/test/resources/units/base");

  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  /** Applies a patch to a content folder of this repository and judges the result. */
  public static CheckedEdit after(Path folder, String patch) {
    ContentEdit edit = ContentEdit.apply(filesOf(folder), patch);
    try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
      Path content = memory.getPath("/content");
      for (Map.Entry<String, List<String>> file : edit.files().entrySet()) {
        Path path = content.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      return judge(edit, ContentReader.read(content));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CheckedEdit judge(ContentEdit edit, Reading reading) {
    Stream<Problem> found =
        reading.unit().stream()
            .flatMap(
                unit -> ContentRules.judge(Analysis.of(unit), DAY, reading.problems()).stream());
    return new CheckedEdit(
        edit,
        Stream.concat(reading.problems().stream(), found).distinct().sorted().toList(),
        reading.sources());
  }

  private static Map<String, List<String>> filesOf(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      Map<String, List<String>> files = new TreeMap<>();
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllLines(file));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The problems in the form in which patches expect them. */
  public List<ContentEdit.Expected> found() {
    return ContentEdit.Expected.of(problems);
  }

  /** Every problem with its excerpt, notes and help, as an author sees them. */
  public String print() {
    return problems.stream().map(this::print).collect(Collectors.joining());
  }

  private String print(Problem problem) {
    StringBuilder text = new StringBuilder();
    text.append(problem.at()).append(": ").append(problem.severity().word()).append(": ");
    text.append(problem.message()).append(" [").append(problem.fault().id()).append("]\n");
    sources
        .excerpt(problem.at())
        .ifPresent(line -> text.append(underlined(line.stripTrailing(), problem.at())));
    problem.notes().forEach(n -> text.append("  note: " + n.at() + ": " + n.message() + "\n"));
    problem.help().ifPresent(help -> text.append("  mend: ").append(help).append('\n'));
    return text.toString();
  }

  private static String underlined(String line, Location at) {
    int skipped = line.length() - line.stripLeading().length();
    int before = Math.max(0, at.column() - 1 - skipped);
    return "  | "
        + line.strip()
        + "\n  | "
        + " ".repeat(before)
        + "^".repeat(Math.max(1, at.length()))
        + "\n";
  }

  /** The text of a resource of the tests. */
  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
