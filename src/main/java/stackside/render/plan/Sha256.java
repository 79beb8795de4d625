package stackside.render.plan;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hash from which the codes and fingerprints of cards are derived. */
final class Sha256 {
  private Sha256() {}

  static byte[] digest(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
