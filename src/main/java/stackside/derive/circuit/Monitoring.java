package stackside.derive.circuit;

import java.util.Optional;
import stackside.model.Condition;
import stackside.model.ElectrodeArea;

/**
 * What a machine's monitor detects about the neutral electrode. A continuity monitor sends its
 * current out through one conductor of the plate's cable and back through the other. It therefore
 * detects a break in the cable but nothing about the skin. The same is true of a contact-quality
 * monitor with an electrode in one piece. With a split electrode, the current of a contact-quality
 * monitor must pass through the skin between the halves.
 */
final class Monitoring {
  private Monitoring() {}

  /** The condition that the monitor reports, if any. */
  static Optional<Condition> condition(CircuitState state) {
    return switch (state.machine().monitor().value()) {
      case NONE -> Optional.empty();
      case CONTINUITY -> throughCable(state.neutral());
      case CONTACT_QUALITY ->
          split(state) ? throughSkin(state.neutral()) : throughCable(state.neutral());
    };
  }

  private static boolean split(CircuitState state) {
    return state.neutralElectrode().stream()
        .anyMatch(electrode -> electrode.area().value() == ElectrodeArea.SPLIT);
  }

  private static Optional<Condition> throughCable(NeutralState neutral) {
    return switch (neutral) {
      case NOT_USED, CABLE_OUT, CABLE_BROKEN -> Optional.of(Condition.NEUTRAL_CIRCUIT_OPEN);
      case ON_SKIN, PARTLY_OFF, OFF_SKIN -> Optional.empty();
    };
  }

  private static Optional<Condition> throughSkin(NeutralState neutral) {
    return switch (neutral) {
      case NOT_USED, CABLE_OUT, CABLE_BROKEN, OFF_SKIN ->
          Optional.of(Condition.NEUTRAL_CIRCUIT_OPEN);
      case PARTLY_OFF -> Optional.of(Condition.NEUTRAL_CONTACT_POOR);
      case ON_SKIN -> Optional.empty();
    };
  }
}
