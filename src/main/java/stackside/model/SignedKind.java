package stackside.model;

/** The kinds of things that are signed. */
public enum SignedKind implements Word {
  PROFILE,
  MACHINE,
  DRILL,
  CHECKLIST,
  ROOM
}
