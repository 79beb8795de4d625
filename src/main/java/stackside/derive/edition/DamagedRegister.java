package stackside.derive.edition;

/** A register that cannot be trusted; the message says why. */
public final class DamagedRegister extends Exception {
  private static final long serialVersionUID = 1;

  DamagedRegister(String message) {
    super(message);
  }
}
