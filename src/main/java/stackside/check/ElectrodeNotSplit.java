package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Electrode;
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
    return ElectrodeDoubt.problems(
        analysis.unit(),
        ElectrodeDoubt.IN_ONE_PIECE,
        ElectrodeNotSplit::single,
        ElectrodeNotSplit::several);
  }

  private static Problem single(ElectrodeDoubt.Named named) {
    return FAULT
        .at(named.electrode().at(), words(List.of(named), named.electrode().value()))
        .note(
            named.profile().machine().value().monitor().at(),
            "where the machine's description names its monitor")
        .help("name a split one, or correct the machine's monitor");
  }

  private static Problem several(List<ElectrodeDoubt.Named> named) {
    Electrode electrode = named.get(0).electrode().value();
    return FAULT
        .at(electrode.area().at(), words(named, electrode))
        .note(named.get(0).electrode().at(), ElectrodeDoubt.count(named) + ", here first")
        .help("correct what is mistyped, or name a split one in the profiles");
  }

  private static String words(List<ElectrodeDoubt.Named> named, Electrode electrode) {
    return "%s is in one piece, and the contact-quality monitor of %s works only with a split one"
        .formatted(Wording.quoted(electrode), ElectrodeDoubt.machines(named));
  }
}
