package stackside.render.card;

import java.security.MessageDigest;
import java.util.HexFormat;
import stackside.render.OutputFile;

/** Prints a digest of every card of the demonstration. Runs in a separate process. */
final class CardDigests {
  private CardDigests() {}

  public static void main(String[] arguments) throws Exception {
    System.out.print(all());
  }

  static String all() throws Exception {
    StringBuilder digests = new StringBuilder();
    for (OutputFile card : Demonstration.cards()) {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(card.bytes());
      digests.append(card.path()).append(' ').append(HexFormat.of().formatHex(digest)).append('\n');
    }
    return digests.toString();
  }
}
