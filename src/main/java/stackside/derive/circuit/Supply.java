package stackside.derive.circuit;

/** What has to be there for anything to work. */
public enum Supply {
  MAINS,
  FOOT_SWITCH,
  ARGON
}
