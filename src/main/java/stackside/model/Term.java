package stackside.model;

/** Things that the trade calls by several names; the unit may choose its own. */
public enum Term implements Word {
  MACHINE("generator"),
  NEUTRAL_ELECTRODE("neutral electrode"),
  FOOT_SWITCH("foot switch"),
  SOCKET("socket"),
  MONITOR("contact-quality monitor");

  private final String usual;

  Term(String usual) {
    this.usual = usual;
  }

  /** The word where the unit has not chosen its own. */
  public String usual() {
    return usual;
  }
}
