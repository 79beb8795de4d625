package stackside.quantity;

/**
 * A text that is not a quantity of the expected kind. The content reader turns it into a problem at
 * the place of the text.
 */
public final class UnreadableQuantity extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String hint;

  UnreadableQuantity(String message, String hint) {
    super(message);
    this.hint = hint;
  }

  /** What is wrong, starting in lower case and without a full stop. */
  public String problem() {
    return String.valueOf(getMessage());
  }

  /** How such a quantity is written, without any number that could be mistaken for advice. */
  public String hint() {
    return hint;
  }
}
