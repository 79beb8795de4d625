package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Instrument;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes of another kind than the instrument on their pedal's circuit. */
final class ModeOfWrongKind implements Rule {
  private static final Fault FAULT =
      new Fault(
          "mode-of-wrong-kind", Severity.ERROR, "a mode is of another kind than the instrument");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      profile.settings().filter(it -> !instrumentIsTheOddOne(it)).ifPresent(it -> check(it, found));
    }
    return found;
  }

  private static boolean instrumentIsTheOddOne(Settings settings) {
    return settings.assigned().stream()
        .map(it -> Optional.of(it.mode().value().kind().value()))
        .allMatch(settings.socket().value().kind().value().energy()::equals);
  }

  private static void check(Settings settings, List<Problem> found) {
    Instrument instrument = settings.instrument().value();
    for (PedalSetting setting : settings.assigned()) {
      Mode mode = setting.mode().value();
      if (mode.kind().value() != instrument.kind().value()) {
        found.add(
            FAULT
                .at(
                    setting.mode().at(),
                    "%s is a %s mode, and %s is %s"
                        .formatted(
                            Wording.quoted(mode),
                            mode.kind().value().spoken(),
                            Wording.quoted(instrument),
                            instrument.kind().value().spoken()))
                .note(mode.kind().at(), "where the machine's description says so")
                .help("name a mode of the instrument's kind, or another instrument"));
      }
    }
  }
}
