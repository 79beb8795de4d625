package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.SocketKind;
import stackside.model.Term;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines with monopolar or argon modes and no socket for the neutral electrode. */
final class NeutralSocketMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "neutral-socket-missing",
          Severity.ERROR,
          "a machine with monopolar modes has no socket for the neutral electrode");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .filter(machine -> !machine.hasSocket(SocketKind.NEUTRAL))
        .flatMap(
            machine ->
                machine.modes().stream()
                    .filter(mode -> mode.kind().value().needsNeutralElectrode())
                    .limit(1)
                    .map(mode -> problem(analysis.unit(), machine, mode)))
        .toList();
  }

  private static Problem problem(Unit unit, Machine machine, Mode mode) {
    return FAULT
        .at(
            machine.name().at(),
            "%s has %s and no socket for a %s"
                .formatted(
                    Wording.quoted(machine),
                    Wording.quoted(mode),
                    unit.word(Term.NEUTRAL_ELECTRODE)))
        .note(mode.kind().at(), "a mode that needs one")
        .help("add the socket with 'kind: neutral', or correct the kind of one that is there");
  }
}
