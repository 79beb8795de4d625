package stackside.model;

/** The kinds of things that are signed. */
public enum SignedKind implements Word {
  PROFILE,
  MACHINE,
  DRILL,
  CHECKLIST,
  ROOM,
  /** One generator with its number: that it may be used, since when, with which software. */
  ASSET,
  /** The list of publications, as one. */
  SOURCES,
  /** What holds for the whole unit. Whoever signs anything signs it too. */
  POLICIES,
  /** What one role signs. It signs that itself, so that nobody loses a say unasked. */
  ROLE
}
