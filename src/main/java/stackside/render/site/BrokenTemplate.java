package stackside.render.site;

/** A template that cannot be filled: a bug of ours, or of a unit's own template. */
public final class BrokenTemplate extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  BrokenTemplate(String template, String page, Throwable cause) {
    super(
        "template " + template + " cannot be filled for " + page + ": " + cause.getMessage(),
        cause);
  }
}
