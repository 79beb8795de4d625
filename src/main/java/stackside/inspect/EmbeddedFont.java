package stackside.inspect;

/** A font that the page uses. */
public record EmbeddedFont(String name, boolean embedded) {

  /** The name without the mark of a subset. */
  public String bare() {
    return name.replaceFirst("^[A-Z]{6}\\+", "");
  }
}
