package stackside.derive.signed;

import java.math.BigInteger;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.regex.Pattern;

/**
 * The SHA-256 of canonical JSON, in letters and digits that cannot be misread: there is no letter
 * i, l, o or u, so a 0 is always a nought and a 1 a one. In groups of four: {@code 7k4m-92qt-…}, 52
 * signs in all.
 */
public record Fingerprint(String text) {
  private static final String SIGNS = "0123456789abcdefghjkmnpqrstvwxyz";
  private static final int LENGTH = 52;
  private static final int GROUP = 4;
  private static final int SHORT = 5 * GROUP + 4;
  private static final Pattern FORM =
      Pattern.compile("([" + SIGNS + "]{4}-){12}[" + SIGNS + "]{4}");

  public Fingerprint {
    if (!isFingerprint(text)) {
      throw new IllegalArgumentException("not a fingerprint: " + text);
    }
  }

  public static boolean isFingerprint(String text) {
    return FORM.matcher(text).matches();
  }

  public static Fingerprint of(Json value) {
    return of(CanonicalJson.bytes(value));
  }

  public static Fingerprint of(byte[] bytes) {
    BigInteger rest = new BigInteger(1, digest(bytes));
    StringBuilder signs = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      signs.append(SIGNS.charAt(rest.intValue() & 31));
      rest = rest.shiftRight(5);
    }
    signs.reverse();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < LENGTH; i += GROUP) {
      text.append(i == 0 ? "" : "-").append(signs, i, i + GROUP);
    }
    return new Fingerprint(text.toString());
  }

  static byte[] digest(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** The first group, enough to tell two cards of one number apart. */
  public String mark() {
    return text.substring(0, GROUP);
  }

  /** The first two groups, enough to type. */
  public String number() {
    return text.substring(0, 2 * GROUP + 1);
  }

  /** The first five groups, enough for people to compare. */
  public String shortText() {
    return text.substring(0, SHORT);
  }

  @Override
  public String toString() {
    return text;
  }
}
