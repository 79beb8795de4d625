package stackside.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** All problems by place, each once; what is missing is told once, wherever it is named. */
  List<Problem> sorted() {
    Map<String, List<Problem>> missing = new LinkedHashMap<>();
    List<Problem> all = new ArrayList<>();
    for (Problem problem : met.stream().distinct().sorted().toList()) {
      if (problem.fault().equals(ReadingFaults.UNKNOWN_REFERENCE)) {
        missing.computeIfAbsent(problem.message(), message -> new ArrayList<>()).add(problem);
      } else {
        all.add(problem);
      }
    }
    missing.values().forEach(same -> all.add(told(same)));
    return all.stream().sorted().toList();
  }

  private static Problem told(List<Problem> same) {
    if (same.size() == 1) {
      return same.get(0);
    }
    int more = same.size() - 2;
    return same.get(0)
        .note(
            same.get(1).at(),
            more == 0
                ? "it is named here too"
                : "it is named here too, and " + more + " times more");
  }
}
