package stackside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.model.Unit;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Sources;

/** Reads units for tests: small ones of the test resources, and the demonstration unit. */
public final class Units {
  private static final Path SMALL = Path.of("src/test/resources/units");
  private static final Path DEMONSTRATION = Path.of("content");

  private Units() {}

  /** The demonstration unit, which must read without a problem. */
  public static Unit demonstration() {
    return whole(DEMONSTRATION);
  }

  /** A unit under {@code src/test/resources/units}, which must read without a problem. */
  public static Unit read(String name) {
    return whole(SMALL.resolve(name));
  }

  /** The unit in a folder, which must read without a problem. */
  public static Unit whole(Path folder) {
    Reading reading = reading(folder);
    assertThat(reading.problems()).as(printed(reading)).isEmpty();
    return reading.unit().orElseThrow();
  }

  /** What comes of reading a folder, problems and all. */
  public static Reading reading(Path folder) {
    try {
      return ContentReader.read(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The folder of a unit under {@code src/test/resources/units}. */
  public static Path folder(String name) {
    return SMALL.resolve(name);
  }

  /** The problems of a reading as an author would see them. */
  public static String printed(Reading reading) {
    return printed(reading.problems(), reading.sources());
  }

  /** Problems as an author would see them. */
  public static String printed(List<Problem> problems, Sources sources) {
    StringBuilder text = new StringBuilder();
    for (Problem problem : problems) {
      text.append('\n').append(line(problem)).append('\n');
      sources.excerpt(problem.at()).ifPresent(line -> text.append(underlined(problem, line)));
      for (Note note : problem.notes()) {
        text.append("  note: ").append(note.at()).append(": ").append(note.message()).append('\n');
      }
      problem.help().ifPresent(help -> text.append("  mend: ").append(help).append('\n'));
    }
    return text.toString();
  }

  private static String line(Problem problem) {
    return problem.at()
        + ": "
        + problem.severity().word()
        + ": "
        + problem.message()
        + " ["
        + problem.fault().id()
        + "]";
  }

  private static String underlined(Problem problem, String line) {
    return "    "
        + line
        + "\n    "
        + " ".repeat(problem.at().column() - 1)
        + "^".repeat(Math.max(1, problem.at().length()))
        + "\n";
  }
}
