package stackside.render.plan;

import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * The last part of a card's address: five letters and digits that people can type. It is derived
 * from the card's name, so that it stays the same from edition to edition.
 */
final class CardCode {

  /** Without characters that look alike: 0 and o, 1, i and l. */
  private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";

  private static final int LENGTH = 5;

  private CardCode() {}

  /** A code for the card with this name that is not already taken. */
  static String of(String name, Set<String> taken) {
    String seed = name;
    while (taken.contains(code(seed))) {
      seed += "+";
    }
    return code(seed);
  }

  private static String code(String seed) {
    byte[] digest = Sha256.digest(seed.getBytes(StandardCharsets.UTF_8));
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      int pair = ((digest[2 * i] & 0xff) << 8) | (digest[2 * i + 1] & 0xff);
      code.append(SIGNS.charAt(pair % SIGNS.length()));
    }
    return code.toString();
  }
}
