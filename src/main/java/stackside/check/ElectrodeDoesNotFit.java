package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds neutral electrodes whose plug goes into no neutral socket of the machine. */
final class ElectrodeDoesNotFit implements Rule {
  private static final Fault FAULT =
      new Fault(
          "electrode-does-not-fit",
          Severity.ERROR,
          "a neutral electrode fits no neutral socket of its machine");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return ElectrodeDoubt.named(analysis.unit(), ElectrodeDoubt.OTHER_PLUG).stream()
        .map(named -> problem(named.electrode(), named.profile().machine().value()))
        .toList();
  }

  private static Problem problem(Fact<Electrode> electrode, Machine machine) {
    return FAULT
        .at(
            electrode.at(),
            "the plug of %s, '%s', goes into no neutral socket of %s"
                .formatted(
                    Wording.quoted(electrode.value()),
                    electrode.value().plug().value(),
                    Wording.quoted(machine)))
        .note(electrode.value().plug().at(), "where the electrode's plug stands")
        .help("name an electrode that fits, or add the adaptor to cables.yaml");
  }
}
