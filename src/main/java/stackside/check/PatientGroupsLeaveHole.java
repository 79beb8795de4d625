package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Kind;
import stackside.quantity.Kilograms;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds weights between two patient groups that neither holds. */
final class PatientGroupsLeaveHole implements Rule {
  private static final Fault FAULT =
      new Fault(
          "patient-groups-leave-hole",
          Severity.ERROR,
          "a weight between two patient groups belongs to none");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.PATIENT_GROUP)) {
      return List.of();
    }
    return new Bands<>(
            analysis.unit().details().patients().stream()
                .map(group -> new Bands.Entry<>(group, group.weight()))
                .toList())
        .holes().stream().map(PatientGroupsLeaveHole::problem).toList();
  }

  private static Problem problem(Bands.Pair<Kilograms> hole) {
    return FAULT
        .at(hole.upper().band().at(), "no patient group holds " + Bands.between(hole))
        .note(hole.lower().band().at(), "the group below")
        .help("let the groups meet");
  }
}
