package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One line of a page or one cell of a table, made of pieces. */
public record Line(List<Piece> pieces) {

  public Line {
    pieces = List.copyOf(pieces);
  }

  static Line of(String text) {
    return new Line(List.of(Piece.of(text)));
  }

  static Line of(Piece... pieces) {
    return new Line(List.of(pieces));
  }

  /** Joins lines, with words in between. */
  static Line joined(List<Line> lines, String between) {
    List<Piece> pieces = new ArrayList<>();
    for (Line line : lines) {
      if (!pieces.isEmpty()) {
        pieces.add(Piece.of(between));
      }
      pieces.addAll(line.pieces());
    }
    return new Line(pieces);
  }

  Line then(Piece... more) {
    return new Line(Stream.concat(pieces.stream(), Stream.of(more)).toList());
  }

  Line then(Line more) {
    return new Line(Stream.concat(pieces.stream(), more.pieces().stream()).toList());
  }
}
