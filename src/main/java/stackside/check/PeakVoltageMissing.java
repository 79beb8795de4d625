package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes in use of which the description gives no peak voltage at the level used. */
final class PeakVoltageMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "peak-voltage-missing", Severity.ERROR, "a mode in use has no peak voltage at its level");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .filter(setting -> levelMakesSense(setting) && isMissing(setting))
        .collect(
            Collectors.groupingBy(
                setting -> setting.mode().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(PeakVoltageMissing::problem)
        .toList();
  }

  private static boolean isMissing(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .peakVoltage()
        .flatMap(volts -> volts.at(setting.level().map(Fact::value)))
        .isEmpty();
  }

  private static boolean levelMakesSense(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .level()
        .map(scale -> setting.level().map(it -> scale.levels().contains(it.value())).orElse(false))
        .orElse(setting.level().isEmpty());
  }

  private static Problem problem(List<PedalSetting> same) {
    Mode mode = same.get(0).mode().value();
    List<String> levels =
        same.stream()
            .flatMap(it -> it.level().stream())
            .map(it -> Wording.level(mode, it.value()))
            .toList();
    return FAULT
        .at(
            mode.peakVoltage().map(ByLevel::at).orElse(mode.name().at()),
            "no peak voltage is given for %s%s, and so no rating can be compared with it"
                .formatted(
                    Wording.quoted(mode), levels.isEmpty() ? "" : " at " + Wording.list(levels)))
        .note(same.get(0).mode().at(), "a profile that uses it")
        .help("add it from the manufacturer's instructions");
  }
}
