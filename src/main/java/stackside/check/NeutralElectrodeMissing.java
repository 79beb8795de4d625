package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Mode;
import stackside.model.Settings;
import stackside.model.Term;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds monopolar and argon settings without a neutral electrode. */
final class NeutralElectrodeMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "neutral-electrode-missing",
          Severity.ERROR,
          "monopolar current is approved without a neutral electrode");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(settings -> settings.neutralElectrode().isEmpty())
        .flatMap(settings -> problem(analysis.unit(), settings).stream())
        .toList();
  }

  private static Optional<Problem> problem(Unit unit, Settings settings) {
    return settings.assigned().stream()
        .map(setting -> setting.mode().value())
        .filter(mode -> mode.kind().value().needsNeutralElectrode())
        .filter(mode -> settings.instrument().value().kind().value().needsNeutralElectrode())
        .findFirst()
        .map(mode -> problem(unit, settings, mode));
  }

  private static Problem problem(Unit unit, Settings settings, Mode mode) {
    return FAULT
        .at(
            settings.instrument().at(),
            "%s sends current through the patient, and no %s is named"
                .formatted(Wording.quoted(mode), unit.word(Term.NEUTRAL_ELECTRODE)))
        .note(
            mode.kind().at(),
            "where the machine's description says that the mode is " + mode.kind().value().spoken())
        .help("add 'neutral-electrode' with the one that was approved");
  }
}
