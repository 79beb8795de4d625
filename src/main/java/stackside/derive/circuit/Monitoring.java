package stackside.derive.circuit;

import java.util.Optional;
import stackside.model.Condition;
import stackside.model.ElectrodeArea;

/**
 * What a machine's monitor makes of the neutral electrode. A continuity monitor sends its current
 * out through one conductor of the plate's cable and back through the other, and so sees a break in
 * the cable and nothing of the skin; so does a contact-quality monitor on an electrode in one
 * piece. On a split electrode a contact-quality monitor's current has to pass through the skin
 * between the halves.
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
