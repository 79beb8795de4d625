package stackside.render.plan;

/** One of the two sides of a laminated card. */
public enum Face {
  SETTINGS("settings"),
  SET_UP("set-up");

  private final String word;

  Face(String word) {
    this.word = word;
  }

  /** The word used in file names and message keys. */
  public String word() {
    return word;
  }
}
