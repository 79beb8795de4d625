package stackside.model;

/** Things that have several names in the trade; the unit may choose which to use. */
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

  /** The default word, used unless the unit has chosen its own. */
  public String usual() {
    return usual;
  }
}
