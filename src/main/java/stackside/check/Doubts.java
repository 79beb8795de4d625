package stackside.check;

import stackside.derive.Analysis;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.Mode;

/** Which modes another, weightier rule already speaks about: one mistake, one message. */
final class Doubts {
  private Doubts() {}

  /** Whether a soft mode can spark or a cut cannot, by its description. */
  static boolean ofSparks(Analysis analysis, Mode mode) {
    return analysis.questions().sparks().stream()
        .anyMatch(question -> question.mode().id().equals(mode.id()));
  }

  /** Whether the mode, at a level in use, puts more voltage on a part than it is rated for. */
  static boolean ofRatings(Analysis analysis, Mode mode) {
    return analysis.voltages().stream()
        .filter(VoltageCheck::exceeded)
        .anyMatch(check -> check.pedal().mode().value().id().equals(mode.id()));
  }
}
