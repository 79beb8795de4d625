package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds neutral electrodes in one piece on machines whose contact-quality monitor needs a split
 * one. Source: AORN glossary 2012, read; the IEC definitions from memory.
 */
final class ElectrodeNotSplit implements Rule {
  private static final Fault FAULT =
      new Fault(
          "electrode-not-split",
          Severity.ERROR,
          "a contact-quality monitor is given a neutral electrode in one piece");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return ElectrodeDoubt.named(analysis.unit(), ElectrodeDoubt.IN_ONE_PIECE).stream()
        .map(named -> problem(named.profile().machine().value(), named.electrode()))
        .toList();
  }

  private static Problem problem(Machine machine, Fact<Electrode> electrode) {
    return FAULT
        .at(
            electrode.at(),
            "%s is in one piece, and the contact-quality monitor of %s works only with a split one"
                .formatted(Wording.quoted(electrode.value()), Wording.quoted(machine)))
        .note(machine.monitor().at(), "where the machine's description names its monitor")
        .help("name a split one, or correct the machine's monitor");
  }
}
