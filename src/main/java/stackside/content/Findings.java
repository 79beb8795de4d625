package stackside.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.model.Kind;
import stackside.model.Thing;
import stackside.source.Problem;
import stackside.source.Severity;

/** Collects the problems of one reading in the order in which they are found. */
final class Findings {
  private final List<Problem> met = new ArrayList<>();
  private final Map<Problem, Missing> missing = new HashMap<>();

  /**
   * What an unknown reference looks for.
   *
   * @param name with its owner
   * @param near the only thing of a near name, if there is just one
   */
  record Missing(List<Kind> kinds, String name, Optional<Thing> near) {
    Missing {
      kinds = List.copyOf(kinds);
    }

    boolean mayBe(Missing other) {
      return name.equals(other.name) && kinds.stream().anyMatch(other.kinds::contains);
    }
  }

  /** A reference to something that is not there. It is one problem, however many places name it. */
  void add(Problem problem, Missing what) {
    missing.put(problem, what);
    met.add(problem);
  }

  void add(Problem problem) {
    met.add(problem);
  }

  /** How many were found so far. {@link #errorsSince} takes this number later. */
  int mark() {
    return met.size();
  }

  /** The errors found after a mark. */
  List<Problem> errorsSince(int mark) {
    return met.subList(mark, met.size()).stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .toList();
  }

  /** All problems by place, each once. What is missing is reported once, wherever it is named. */
  List<Problem> sorted() {
    Map<String, List<List<Problem>>> groups = new LinkedHashMap<>();
    List<Problem> all = new ArrayList<>();
    for (Problem problem : met.stream().distinct().sorted().toList()) {
      Missing what = missing.get(problem);
      if (what == null) {
        all.add(problem);
      } else {
        groupOf(what, groups.computeIfAbsent(what.name(), name -> new ArrayList<>())).add(problem);
      }
    }
    groups.values().stream().flatMap(List::stream).forEach(same -> all.add(told(same)));
    return all.stream().sorted().toList();
  }

  /** Among those of the same name, the group that looks for the same thing, or a new one. */
  private List<Problem> groupOf(Missing what, List<List<Problem>> sameName) {
    for (List<Problem> group : sameName) {
      if (missing(group).mayBe(what)) {
        return group;
      }
    }
    List<Problem> group = new ArrayList<>();
    sameName.add(group);
    return group;
  }

  private Missing missing(List<Problem> group) {
    return Optional.ofNullable(missing.get(group.get(0))).orElseThrow();
  }

  /**
   * Reports the problem in the file that holds the thing of the near name, if that file names it
   * too. Otherwise a list comes before a sheet or a page, because those follow the lists.
   */
  private Problem told(List<Problem> same) {
    Optional<String> home = missing(same).near().map(thing -> thing.at().file());
    Problem first =
        same.stream()
            .filter(problem -> home.filter(problem.at().file()::equals).isPresent())
            .findFirst()
            .or(() -> same.stream().filter(each -> each.at().file().endsWith(".yaml")).findFirst())
            .orElse(same.get(0));
    List<Problem> others = new ArrayList<>(same);
    others.remove(first);
    if (others.isEmpty()) {
      return first;
    }
    int more = others.size() - 1;
    Problem told =
        first.note(
            others.get(0).at(),
            more == 0
                ? "it is named here too"
                : "it is named here too, and " + more + (more == 1 ? " time" : " times") + " more");
    return missing(same)
        .near()
        .map(thing -> told.note(thing.at(), Quote.of(thing.id().local()) + " stands here"))
        .orElse(told);
  }
}
