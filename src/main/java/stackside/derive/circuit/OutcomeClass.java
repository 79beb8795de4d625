package stackside.derive.circuit;

import stackside.model.Word;

/** How bad the outcome of a fault is, worst first. */
public enum OutcomeClass implements Word {
  /** An instrument that nobody is using is live. */
  UNINTENDED_INSTRUMENT_LIVE,
  /** Everything looks and sounds right, but the instrument in hand gets a different current. */
  SILENT_OTHER_SETTING,
  /** Everything looks and sounds right, but the current leaves through too little skin. */
  SILENT_CROWDED_RETURN,
  /** Everything looks and sounds right, but the instrument in hand gets no current. */
  SILENT_NO_CURRENT,
  /** Something looks or sounds unusual. */
  NOTICEABLE,
  /** The machine raises an alarm and delivers no current. */
  BLOCKED_WITH_ALARM,
  /** The instrument in hand gets what is approved, and nothing else is live. */
  RIGHT;

  /** Whether nothing warns the people in the room. */
  public boolean silent() {
    return switch (this) {
      case UNINTENDED_INSTRUMENT_LIVE,
          SILENT_OTHER_SETTING,
          SILENT_CROWDED_RETURN,
          SILENT_NO_CURRENT ->
          true;
      case NOTICEABLE, BLOCKED_WITH_ALARM, RIGHT -> false;
    };
  }

  /** The worse of the two. */
  public OutcomeClass worse(OutcomeClass other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
