package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stackside.derive.Analysis;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
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
    Set<List<Object>> told = new LinkedHashSet<>();
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      for (PedalSetting setting : profile.pedalSettings()) {
        Mode mode = setting.mode().value();
        Optional<Level> level = setting.level().map(Fact::value);
        boolean missing = mode.peakVoltage().flatMap(volts -> volts.at(level)).isEmpty();
        if (missing && levelMakesSense(mode, level) && told.add(List.of(mode.id(), level))) {
          found.add(problem(mode, setting));
        }
      }
    }
    return found;
  }

  private static boolean levelMakesSense(Mode mode, Optional<Level> level) {
    return mode.level()
        .map(scale -> level.map(scale.levels()::contains).orElse(false))
        .orElse(level.isEmpty());
  }

  private static Problem problem(Mode mode, PedalSetting setting) {
    String level = setting.level().map(it -> " at " + Wording.level(mode, it.value())).orElse("");
    return FAULT
        .at(
            mode.peakVoltage().map(ByLevel::at).orElse(mode.name().at()),
            "no peak voltage is given for %s%s, and so no rating can be compared with it"
                .formatted(Wording.quoted(mode), level))
        .note(setting.mode().at(), "a profile that uses it")
        .help("add it from the manufacturer's instructions");
  }
}
