package stackside.cli;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Sources;

/**
 * Puts a problem into words for a person: the message, the line that it is about, where else to
 * look, what to do.
 */
final class ProblemText {
  private final Sources sources;

  ProblemText(Sources sources) {
    this.sources = sources;
  }

  List<String> lines(Problem problem) {
    List<String> lines = new ArrayList<>();
    lines.add(
        plain(
            problem.at()
                + ": "
                + problem.severity().word()
                + ": "
                + problem.message()
                + " ["
                + problem.fault().id()
                + "]"));
    sources.excerpt(problem.at()).ifPresent(line -> lines.addAll(Excerpt.of(problem.at(), line)));
    for (Note note : problem.notes()) {
      lines.add(plain("  note: " + note.at() + ": " + note.message()));
    }
    problem.help().ifPresent(help -> lines.add(plain("  mend: " + help)));
    return lines;
  }

  private static String plain(String text) {
    return Printable.of(text).text();
  }
}
