package stackside.render.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.derive.signed.Fingerprint;
import stackside.render.Drawing;
import stackside.render.Ink;
import stackside.render.Shape;
import stackside.source.Location;

/** The words of a drawing on a card affect the card's fingerprint; its layout does not. */
final class CardDigestTest {

  private static Fingerprint digest(double size, String... lines) {
    List<Shape> words = Stream.of(lines).map(line -> (Shape) words(line, size)).toList();
    Drawing panel = new Drawing("Front panel", "Two sockets.", 80 * size, 30, words);
    return CardDigest.of(List.of(new Block.Maps(panel, List.of())));
  }

  private static Shape.Words words(String line, double size) {
    return new Shape.Words(1, 2, line, size, Shape.Weight.BOLD, Shape.Anchor.MIDDLE, Ink.INK);
  }

  @Test
  void otherBreaksAndSizesOfWords_areTheSameCard() {
    Fingerprint before = digest(3, "Snare", "Keep", "empty");
    assertThat(digest(3, "Snare", "Keep empty")).isEqualTo(before);
    assertThat(digest(4, "Snare", "Keep", "empty")).isEqualTo(before);
  }

  @Test
  void anotherWord_isAnotherCard() {
    assertThat(digest(3, "Snare", "Keep", "full"))
        .isNotEqualTo(digest(3, "Snare", "Keep", "empty"));
  }

  /**
   * The fingerprint of one block of each kind, which no other name or place of a type may change:
   * every card on every wall would get another edition.
   */
  @Test
  void theFingerprintOfTheSameWordsStaysTheSame() {
    Phrase words = new Phrase("words", Location.startOf("unit.yaml"));
    Drawing drawing = new Drawing("title", "description", 1, 1, List.of());
    List<Block> blocks =
        List.of(
            new Block.Identity(words, words, words, words, words),
            new Block.Marks(List.of(words)),
            new Block.MakeSafe(List.of(words)),
            new Block.Maps(drawing, List.of()),
            new Block.Answers(List.of(words), List.of()),
            new Block.SetUp(words, List.of()),
            new Block.Drilled(words, words, Optional.empty(), List.of()),
            new Block.Contacts(List.of()),
            new Block.Footer(List.of(words)),
            new Block.Code(words, words, "held"));
    assertThat(blocks)
        .as("one block of each kind: add a new kind to this list, and its tag below")
        .hasSize(Block.class.getPermittedSubclasses().length);
    assertThat(blocks)
        .extracting(Block::tag)
        .containsExactly(
            "Identity",
            "Marks",
            "MakeSafe",
            "Maps",
            "Answers",
            "SetUp",
            "Drilled",
            "Contacts",
            "Footer",
            "Code");
    assertThat(CardDigest.of(blocks))
        .as("the fingerprint of these blocks: it may change only when a new kind joined the list")
        .hasToString("0zxh-7wet-6ypv-hp1g-t289-y879-yydb-hwkk-kb5n-kftn-pgpe-7n14-yj78");
  }
}
