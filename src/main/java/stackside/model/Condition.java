package stackside.model;

/**
 * What a machine may meet while somebody presses a pedal. A closed list: the machine's description
 * says how it answers each.
 */
public enum Condition implements Word {
  INSTRUMENT_CIRCUIT_OPEN,
  SELECTED_SOCKET_EMPTY,
  NEUTRAL_CIRCUIT_OPEN,
  NEUTRAL_CONTACT_POOR,
  FOOT_SWITCH_MISSING,
  ARGON_EMPTY,
  MAINS_OFF
}
