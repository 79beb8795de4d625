package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines described as selecting their socket in a way that they have no means for. */
final class SelectionImpossible implements Rule {
  private static final Fault FAULT =
      new Fault(
          "selection-impossible",
          Severity.ERROR,
          "a machine cannot select its socket in the way described");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .flatMap(
            machine ->
                SelectionDoubt.of(machine).stream()
                    .map(
                        reason ->
                            FAULT
                                .at(
                                    machine.selectsSocket().at(),
                                    "%s cannot select its socket %s: %s"
                                        .formatted(
                                            Wording.quoted(machine),
                                            machine.selectsSocket().value().spoken(),
                                            reason))
                                .help("correct how the socket is selected, or the sockets")))
        .toList();
  }
}
