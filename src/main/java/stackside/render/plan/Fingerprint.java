package stackside.render.plan;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.render.Drawing;

/**
 * A short digest of what a card says, printed on it: two cards with the same fingerprint say the
 * same. Where the words stand in the content makes no difference.
 */
final class Fingerprint {

  private static final int PRINTED = 8;

  private Fingerprint() {}

  static String of(List<Block> blocks) {
    String said = blocks.stream().map(Fingerprint::said).collect(Collectors.joining("\n"));
    byte[] digest = Sha256.digest(said.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(digest).substring(0, PRINTED);
  }

  private static String said(Block block) {
    Stream<String> words = block.phrases().map(Phrase::words);
    if (block instanceof Block.Maps maps) {
      Stream<Drawing> drawings = Stream.concat(Stream.of(maps.sockets()), maps.pedals().stream());
      words = Stream.concat(words, drawings.map(Drawing::toString));
    }
    return block.getClass().getSimpleName() + "\n" + words.collect(Collectors.joining("\n"));
  }
}
