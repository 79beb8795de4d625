package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms that keep spares and do not say where. */
final class SparesPlaceMissing implements Rule {
  private static final Fault FAULT =
      new Fault("spares-place-missing", Severity.ERROR, "a room keeps spares and says not where");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().rooms().stream()
        .filter(room -> room.keeps().sparesWhere().isEmpty())
        .filter(room -> !room.keeps().spares().isEmpty())
        .map(
            room ->
                FAULT
                    .at(
                        room.keeps().spares().get(0).at(),
                        Wording.quoted(room) + " keeps spares, and nothing says where they lie")
                    .help("add 'spares-where' in the words that staff use"))
        .toList();
  }
}
