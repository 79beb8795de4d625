package stackside.model;

import java.util.Optional;

/** What a socket is for. */
public enum SocketKind implements Word {
  MONOPOLAR,
  BIPOLAR,
  NEUTRAL,
  ARGON,
  FOOT_SWITCH;

  /**
   * The kind of current that the socket delivers; none for the neutral electrode and the foot
   * switch.
   */
  public Optional<EnergyKind> energy() {
    return switch (this) {
      case MONOPOLAR -> Optional.of(EnergyKind.MONOPOLAR);
      case BIPOLAR -> Optional.of(EnergyKind.BIPOLAR);
      case ARGON -> Optional.of(EnergyKind.ARGON);
      case NEUTRAL, FOOT_SWITCH -> Optional.empty();
    };
  }
}
