package stackside.model;

/**
 * A text or a group of facts that does not make sense as what it should be. The reader of content
 * turns it into a problem at the place of the text.
 */
public final class UnreadableText extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String hint;

  public UnreadableText(String problem, String hint) {
    super(problem);
    this.hint = hint;
  }

  /** What is wrong, lower case, without a full stop. */
  public String problem() {
    return String.valueOf(getMessage());
  }

  /** The kind of edit that mends it. */
  public String hint() {
    return hint;
  }
}
