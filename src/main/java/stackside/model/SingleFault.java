package stackside.model;

/**
 * One thing that has gone wrong, everything else being as approved. The list is closed: the circuit
 * model handles each.
 */
public enum SingleFault implements Word {
  INSTRUMENT_IN_WRONG_SOCKET,
  SOCKET_NOT_SELECTED,
  INSTRUMENT_PLUG_LOOSE,
  INSTRUMENT_CABLE_BROKEN,
  OTHER_INSTRUMENT_LEFT_IN,
  NEUTRAL_OFF_SKIN,
  NEUTRAL_PARTLY_OFF,
  NEUTRAL_CABLE_OUT,
  NEUTRAL_CABLE_BROKEN,
  FOOT_SWITCH_OUT,
  WRONG_PEDAL,
  WRONG_PROGRAM,
  ARGON_EMPTY,
  MAINS_OFF
}
