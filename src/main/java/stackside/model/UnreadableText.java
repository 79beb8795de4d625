package stackside.model;

/**
 * A text or a group of facts that makes no sense as what it should be. The content reader turns it
 * into a problem at the place of the text.
 */
public final class UnreadableText extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String hint;

  public UnreadableText(String problem, String hint) {
    super(problem);
    this.hint = hint;
  }

  /** What is wrong, starting in lower case and without a full stop. */
  public String problem() {
    return String.valueOf(getMessage());
  }

  /** The kind of edit that fixes it. */
  public String hint() {
    return hint;
  }
}
