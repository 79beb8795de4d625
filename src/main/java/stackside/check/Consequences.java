package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Evidence;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Unit;

/** What the circuit rules look at: the failure signs of answers that make sense in themselves. */
final class Consequences {
  private Consequences() {}

  /**
   * Leaves out what follows only from answers whose parts do not fit together, because another rule
   * reports that. An empty argon cylinder is left to the argon rules.
   */
  static List<FailureSign> of(Analysis analysis) {
    return analysis.circuits().signs().stream()
        .filter(sign -> sign.fault() != SingleFault.ARGON_EMPTY)
        .filter(
            sign ->
                sign.outcomes().stream().anyMatch(it -> makesSense(analysis.unit(), it.profile())))
        .toList();
  }

  private static boolean makesSense(Unit unit, Profile profile) {
    boolean plate =
        profile
            .settings()
            .flatMap(Settings::neutralElectrode)
            .map(it -> ElectrodeDoubt.of(unit, profile, it.value()) == ElectrodeDoubt.NONE)
            .orElse(true);
    boolean selection = SelectionDoubt.of(profile.machine().value()).isEmpty();
    return plate && selection && profile.settings().map(Settings::belongTogether).orElse(false);
  }

  /** What a fault that passes unnoticed does, as the end of a sentence. */
  static String words(OutcomeClass outcome) {
    return switch (outcome) {
      case UNINTENDED_INSTRUMENT_LIVE -> "an instrument that nobody is using is live";
      case SILENT_OTHER_SETTING -> "the instrument gets a different current";
      case SILENT_CROWDED_RETURN -> "the current leaves through too little skin";
      case SILENT_NO_CURRENT -> "the instrument gets no current";
      case NOTICEABLE, BLOCKED_WITH_ALARM, RIGHT ->
          throw new IllegalArgumentException(outcome.word() + " does not pass unnoticed");
    };
  }

  /** Whether a sign counts as silent only because nobody has described it. */
  static boolean undescribed(FailureSign sign) {
    return sign.evidence().equals(Optional.of(Evidence.Basis.UNKNOWN));
  }
}
