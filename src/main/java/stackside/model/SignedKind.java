package stackside.model;

/** The kinds of things that are signed. */
public enum SignedKind implements Word {
  PROFILE,
  MACHINE,
  DRILL,
  CHECKLIST,
  ROOM,
  /**
   * One generator with its asset number: that it may be used, since when, and with which software.
   */
  ASSET,
  /** The list of publications, as a single thing. */
  SOURCES,
  /** What applies to the whole unit. Everyone who signs anything signs this too. */
  POLICIES
}
