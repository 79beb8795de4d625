package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.EnergyKind;
import stackside.model.Settings;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds gas flows in settings without an argon mode. */
final class ArgonFlowNeedless implements Rule {
  private static final Fault FAULT =
      new Fault(
          "argon-flow-needless", Severity.ERROR, "a gas flow is given and no mode uses argon");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(ArgonFlowNeedless::noArgon)
        .flatMap(settings -> settings.argonFlow().stream())
        .map(
            flow ->
                FAULT
                    .at(
                        flow.at(),
                        "argon flow " + flow.value() + " is given, and no mode here uses argon")
                    .help("take the flow out, or name the argon mode"))
        .toList();
  }

  private static boolean noArgon(Settings settings) {
    return settings.assigned().stream()
        .noneMatch(setting -> setting.mode().value().kind().value() == EnergyKind.ARGON);
  }
}
