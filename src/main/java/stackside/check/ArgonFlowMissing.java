package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.EnergyKind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds argon settings without a gas flow. */
final class ArgonFlowMissing implements Rule {
  private static final Fault FAULT =
      new Fault("argon-flow-missing", Severity.ERROR, "an argon setting gives no gas flow");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(settings -> settings.argonFlow().isEmpty())
        .flatMap(settings -> settings.assigned().stream())
        .filter(setting -> setting.mode().value().kind().value() == EnergyKind.ARGON)
        .map(
            setting ->
                FAULT
                    .at(
                        setting.mode().at(),
                        "%s works with argon, and no flow is given"
                            .formatted(Wording.quoted(setting.mode().value())))
                    .help("add 'argon-flow' with what was approved"))
        .toList();
  }
}
