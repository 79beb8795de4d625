package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.OutputCheck;
import stackside.model.PedalSetting;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds output checks at a level or a limit that their mode cannot be set to. */
final class OutputCheckCannotBe implements Rule {
  private static final Fault FAULT =
      new Fault(
          "output-check-cannot-be",
          Severity.ERROR,
          "an output check was made at what the machine cannot be set to");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().outputChecks().stream()
        .filter(check -> !isDoubtful(analysis.unit(), check.mode().value()))
        .flatMap(check -> problem(check).stream())
        .toList();
  }

  /** Where a profile cannot be set either, the description of the mode is the thing to look at. */
  private static boolean isDoubtful(Unit unit, Mode mode) {
    return unit.profiles().stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .filter(setting -> setting.mode().value().id().equals(mode.id()))
        .anyMatch(setting -> !setting.canBeSet());
  }

  private static Optional<Problem> problem(OutputCheck check) {
    PedalSetting setting = new PedalSetting(check.at(), check.mode(), check.level(), check.limit());
    if (setting.canBeSet()) {
      return Optional.empty();
    }
    String level =
        check
            .level()
            .map(it -> " at " + Wording.level(check.mode().value(), it.value()))
            .orElse("");
    String limit = check.limit().map(it -> " and " + it.value()).orElse("");
    return Optional.of(
        FAULT
            .at(
                check
                    .limit()
                    .map(Fact::at)
                    .or(() -> check.level().map(Fact::at))
                    .orElse(check.at()),
                "the output was measured in %s%s%s, which cannot be set like that"
                    .formatted(Wording.quoted(check.mode().value()), level, limit))
            .note(check.mode().value().at(), "the machine's description of the mode")
            .help("look the setting up in the record of the measurement, and correct the line"));
  }
}
