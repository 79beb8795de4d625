package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.quantity.Millimetres;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sizes that no class of a shape and kind holds. */
final class SizeClassesLeaveHole implements Rule {
  private static final Fault FAULT =
      new Fault(
          "size-classes-leave-hole",
          Severity.ERROR,
          "the size classes of one shape and kind leave a size out");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (!analysis.unit().broken().isEmpty()) {
      return List.of();
    }
    List<Problem> found = new ArrayList<>();
    for (SizeClasses classes : SizeClasses.of(analysis.unit())) {
      ends(classes, found);
      classes.sizes().holes().forEach(hole -> found.add(between(classes, hole)));
    }
    return found;
  }

  private static Problem between(SizeClasses classes, Bands.Pair<Millimetres> hole) {
    return problem(classes, hole.upper(), Bands.between(hole))
        .note(hole.lower().band().at(), "the class below");
  }

  private static void ends(SizeClasses classes, List<Problem> found) {
    List<Bands.Entry<Millimetres>> entries = classes.sizes().entries();
    Bands.Entry<Millimetres> lowest = entries.get(0);
    lowest
        .from()
        .filter(from -> from.value() > 0)
        .ifPresent(from -> found.add(problem(classes, lowest, "under " + from)));
    Bands.Entry<Millimetres> highest = entries.get(entries.size() - 1);
    if (entries.stream().allMatch(entry -> entry.below().isPresent())) {
      found.add(problem(classes, highest, highest.below().orElseThrow() + " and over"));
    }
  }

  private static Problem problem(SizeClasses classes, Bands.Entry<Millimetres> at, String leftOut) {
    return FAULT
        .at(at.band().at(), "no class of %s holds %s".formatted(classes.what(), leftOut))
        .help("let the classes meet, or add a class for the sizes between");
  }
}
