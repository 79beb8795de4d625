package stackside.derive.circuit;

/** What must be present for anything to work. */
public enum Supply {
  MAINS,
  FOOT_SWITCH,
  ARGON
}
