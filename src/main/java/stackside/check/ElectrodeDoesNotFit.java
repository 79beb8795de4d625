package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Electrode;
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
    return ElectrodeDoubt.problems(
        analysis.unit(),
        ElectrodeDoubt.OTHER_PLUG,
        ElectrodeDoesNotFit::single,
        ElectrodeDoesNotFit::several);
  }

  private static Problem single(ElectrodeDoubt.Named named) {
    Electrode electrode = named.electrode().value();
    return FAULT
        .at(named.electrode().at(), words(List.of(named), electrode))
        .note(electrode.plug().at(), "where the electrode's plug stands")
        .help("name an electrode that fits, or add the adaptor to cables.yaml");
  }

  private static Problem several(List<ElectrodeDoubt.Named> named) {
    Electrode electrode = named.get(0).electrode().value();
    return FAULT
        .at(electrode.plug().at(), words(named, electrode))
        .note(named.get(0).electrode().at(), ElectrodeDoubt.count(named) + ", here first")
        .help("correct the plug, name an electrode that fits, or add the adaptor to cables.yaml");
  }

  private static String words(List<ElectrodeDoubt.Named> named, Electrode electrode) {
    return "the plug of %s, '%s', goes into no neutral socket of %s"
        .formatted(
            Wording.quoted(electrode), electrode.plug().value(), ElectrodeDoubt.machines(named));
  }
}
