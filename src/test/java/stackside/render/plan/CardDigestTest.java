package stackside.render.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.derive.signed.Fingerprint;
import stackside.render.Drawing;
import stackside.render.Ink;
import stackside.render.Shape;

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
}
