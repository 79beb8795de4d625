package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.check.Catalogue;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.source.Problem;

/**
 * Content that was read, linked, worked out and judged.
 *
 * @param analysis absent where the unit itself could not be read
 * @param problems of reading and of the rules, sorted, each once
 */
record Judged(Reading reading, Optional<Analysis> analysis, List<Problem> problems) {

  Judged {
    problems = List.copyOf(problems);
  }

  static Judged of(Path content) throws IOException {
    Reading reading = ContentReader.read(content);
    Optional<Analysis> analysis = reading.unit().map(Analysis::of);
    List<Problem> found = analysis.map(Catalogue::judge).orElse(List.of());
    return new Judged(reading, analysis, reading.problems()).with(found);
  }

  /** With what a later stage found. */
  Judged with(List<Problem> found) {
    List<Problem> all =
        Stream.concat(problems.stream(), found.stream()).distinct().sorted().toList();
    return new Judged(reading, analysis, all);
  }
}
