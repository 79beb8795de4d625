package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One line of a page or one cell of a table, made of pieces. */
public record RichLine(List<TextPiece> pieces) {

  public RichLine {
    pieces = List.copyOf(pieces);
  }

  static RichLine of(String text) {
    return new RichLine(List.of(TextPiece.of(text)));
  }

  static RichLine of(TextPiece... pieces) {
    return new RichLine(List.of(pieces));
  }

  /** Joins lines, with words in between. */
  static RichLine joined(List<RichLine> lines, String between) {
    List<TextPiece> pieces = new ArrayList<>();
    for (RichLine line : lines) {
      if (!pieces.isEmpty()) {
        pieces.add(TextPiece.of(between));
      }
      pieces.addAll(line.pieces());
    }
    return new RichLine(pieces);
  }

  RichLine then(TextPiece... more) {
    return new RichLine(Stream.concat(pieces.stream(), Stream.of(more)).toList());
  }

  RichLine then(RichLine more) {
    return new RichLine(Stream.concat(pieces.stream(), more.pieces().stream()).toList());
  }
}
