package stackside.derive.circuit;

/** The state of the neutral electrode and its cable. */
public enum NeutralState {
  NOT_USED,
  ON_SKIN,
  PARTLY_OFF,
  OFF_SKIN,
  CABLE_OUT,
  CABLE_BROKEN
}
