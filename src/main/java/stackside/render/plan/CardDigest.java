package stackside.render.plan;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.render.Drawing;
import stackside.render.Shape;

/**
 * A digest of what a card says: two cards with the same fingerprint say the same. Neither the place
 * of the words in the content nor the layout of the card affects it. Of a drawing, only its words
 * and its description count. It is printed in groups of four, using letters and digits that cannot
 * be misread.
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
    return block.tag() + "\n" + words.collect(Collectors.joining("\n"));
  }

  /** A drawing's words. Words that another layout breaks differently are still the same words. */
  private static Stream<String> said(Drawing drawing) {
    String words =
        drawing.shapes().stream()
            .filter(Shape.Words.class::isInstance)
            .map(shape -> ((Shape.Words) shape).text())
            .collect(Collectors.joining(" "));
    return Stream.of(drawing.title(), drawing.description(), words);
  }
}
