package stackside.model;

/**
 * What a machine may detect while somebody presses a pedal. The list is closed: the machine's
 * description says how it responds to each.
 */
public enum Condition implements Word {
  INSTRUMENT_CIRCUIT_OPEN,
  SELECTED_SOCKET_EMPTY,
  NEUTRAL_CIRCUIT_OPEN,
  NEUTRAL_CONTACT_POOR,
  FOOT_SWITCH_MISSING,
  ARGON_EMPTY,
  MAINS_OFF;

  /**
   * How the lamps and the display look that an answer leaves out. Without mains nothing is lit;
   * else nobody knows.
   */
  public Unsaid unsaid() {
    return this == MAINS_OFF ? Unsaid.DARK : Unsaid.NOT_KNOWN;
  }
}
