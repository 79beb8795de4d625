package stackside.derive.circuit;

/** What the neutral electrode and its cable are like. */
public enum NeutralState {
  NOT_USED,
  ON_SKIN,
  PARTLY_OFF,
  OFF_SKIN,
  CABLE_OUT,
  CABLE_BROKEN
}
