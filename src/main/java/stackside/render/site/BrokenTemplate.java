package stackside.render.site;

/** A template that cannot be filled: a bug in the program, or in a unit's own template. */
public final class BrokenTemplate extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  BrokenTemplate(String template, String page, Throwable cause) {
    super(
        "template " + template + " cannot be filled for " + page + ": " + cause.getMessage(),
        cause);
  }
}
