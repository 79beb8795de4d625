package stackside.content;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Problem;
import stackside.source.Severity;

/** Collects the problems of one reading in the order in which they are met. */
final class Findings {
  private final List<Problem> met = new ArrayList<>();

  void add(Problem problem) {
    met.add(problem);
  }

  /** How many were met so far; {@link #errorsSince} takes it later. */
  int mark() {
    return met.size();
  }

  /** The errors met after a mark. */
  List<Problem> errorsSince(int mark) {
    return met.subList(mark, met.size()).stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .toList();
  }

  /** All problems by place, each once. */
  List<Problem> sorted() {
    return met.stream().distinct().sorted().toList();
  }
}
