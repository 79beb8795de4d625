package stackside.derive.circuit;

import stackside.model.SingleFault;
import stackside.model.Word;

/** The part of the set-up that a failure belongs to. */
public enum Item implements Word {
  INSTRUMENT,
  INSTRUMENT_CABLE,
  NEUTRAL_ELECTRODE,
  NEUTRAL_CABLE,
  FOOT_SWITCH,
  SELECTION,
  PROGRAM,
  ARGON,
  MAINS;

  static Item of(SingleFault fault) {
    return switch (fault) {
      case INSTRUMENT_IN_WRONG_SOCKET, INSTRUMENT_PLUG_LOOSE, OTHER_INSTRUMENT_LEFT_IN ->
          INSTRUMENT;
      case INSTRUMENT_CABLE_BROKEN -> INSTRUMENT_CABLE;
      case NEUTRAL_OFF_SKIN, NEUTRAL_PARTLY_OFF -> NEUTRAL_ELECTRODE;
      case NEUTRAL_CABLE_OUT, NEUTRAL_CABLE_BROKEN -> NEUTRAL_CABLE;
      case FOOT_SWITCH_OUT, WRONG_PEDAL -> FOOT_SWITCH;
      case SOCKET_NOT_SELECTED -> SELECTION;
      case WRONG_PROGRAM -> PROGRAM;
      case ARGON_EMPTY -> ARGON;
      case MAINS_OFF -> MAINS;
    };
  }
}
