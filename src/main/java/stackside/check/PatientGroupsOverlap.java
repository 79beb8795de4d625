package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.quantity.Kilograms;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds patient groups whose weights overlap. */
final class PatientGroupsOverlap implements Rule {
  private static final Fault FAULT =
      new Fault(
          "patient-groups-overlap", Severity.ERROR, "two patient groups hold the same weight");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return new Bands<>(
            analysis.unit().details().patients().stream()
                .map(group -> new Bands.Entry<>(group, group.weight()))
                .toList())
        .overlaps().stream().map(PatientGroupsOverlap::problem).toList();
  }

  private static Problem problem(Bands.Pair<Kilograms> pair) {
    return FAULT
        .at(
            pair.upper().band().at(),
            "weight %s overlaps with %s, which holds %s"
                .formatted(
                    pair.upper().band().value().text(),
                    Wording.quoted(pair.lower().thing()),
                    pair.lower().band().value().text()))
        .note(pair.lower().band().at(), "the other weight")
        .help("let one group begin where the other ends; '10 kg to 30 kg' holds 10 and not 30");
  }
}
