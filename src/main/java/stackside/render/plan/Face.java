package stackside.render.plan;

/** One of the two sides of a laminated card. */
public enum Face {
  SETTINGS("settings", "Settings"),
  SET_UP("set-up", "Set up, and when it fails");

  private final String word;
  private final String title;

  Face(String word, String title) {
    this.word = word;
    this.title = title;
  }

  /** The word in file names. */
  public String word() {
    return word;
  }

  /** The title as printed. */
  public String title() {
    return title;
  }
}
