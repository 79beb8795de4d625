package stackside.render.plan;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.render.Drawing;
import stackside.render.Shape;

/**
 * A digest of what a card says: two cards with the same fingerprint say the same. Where the words
 * stand in the content makes no difference, nor does how the card is laid out and drawn: of a
 * drawing its words count and what it is described to show. It is printed in groups of four, in
 * letters and digits that cannot be misread.
 */
final class CardDigest {

  private CardDigest() {}

  static Fingerprint of(List<Block> blocks) {
    String said = blocks.stream().map(CardDigest::said).collect(Collectors.joining("\n"));
    return Fingerprint.of(said.getBytes(StandardCharsets.UTF_8));
  }

  private static String said(Block block) {
    Stream<String> words = block.phrases().map(Phrase::words);
    if (block instanceof Block.Maps maps) {
      Stream<Drawing> drawings = Stream.concat(Stream.of(maps.sockets()), maps.pedals().stream());
      words = Stream.concat(words, drawings.flatMap(CardDigest::said));
    }
    return block.getClass().getSimpleName() + "\n" + words.collect(Collectors.joining("\n"));
  }

  /** Words that another layout breaks elsewhere are the same words. */
  private static Stream<String> said(Drawing drawing) {
    String words =
        drawing.shapes().stream()
            .filter(Shape.Words.class::isInstance)
            .map(shape -> ((Shape.Words) shape).text())
            .collect(Collectors.joining(" "));
    return Stream.of(drawing.title(), drawing.description(), words);
  }
}
