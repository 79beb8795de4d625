package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.quantity.Millimetres;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lesions of one shape and kind whose sizes overlap. */
final class SizeClassesOverlap implements Rule {
  private static final Fault FAULT =
      new Fault(
          "size-classes-overlap",
          Severity.ERROR,
          "two size classes of one shape and kind hold the same size");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return SizeClasses.of(analysis.unit()).stream()
        .flatMap(classes -> classes.sizes().overlaps().stream())
        .map(SizeClassesOverlap::problem)
        .toList();
  }

  private static Problem problem(Bands.Pair<Millimetres> pair) {
    return FAULT
        .at(
            pair.upper().band().at(),
            "size %s overlaps with %s, which holds %s"
                .formatted(
                    pair.upper().band().value().text(),
                    Wording.quoted(pair.lower().thing()),
                    pair.lower().band().value().text()))
        .note(pair.lower().band().at(), "the other size")
        .help("let one class begin where the other ends; '10 mm to 20 mm' holds 10 and not 20");
  }
}
