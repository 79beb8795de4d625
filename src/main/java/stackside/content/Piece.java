package stackside.content;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * A piece of content as it was written, before anybody knows what it means. YAML and CSV both turn
 * into pieces; binding turns pieces into records.
 */
sealed interface Piece {
  Location at();

  /** All that it says, in one line: two pieces of the same words say the same. */
  default String words() {
    if (this instanceof Scalar scalar) {
      return scalar.text().strip();
    }
    if (this instanceof Sequence sequence) {
      return sequence.items().stream()
          .map(Piece::words)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    if (this instanceof Mapping mapping) {
      return mapping.entries().stream()
          .map(entry -> entry.key().words() + ": " + entry.value().words())
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return "";
  }

  /** How a text stands in its file, which decides where its parts are. */
  enum Style {
    PLAIN,
    QUOTED,
    LITERAL,
    FOLDED,
    CELL
  }

  /**
   * A single text.
   *
   * @param text without quotes
   * @param lastLine the last line of the file that belongs to it
   */
  record Scalar(Location at, String text, Style style, int lastLine) implements Piece {
    private static final Set<String> NOTHING = Set.of("~", "null", "Null", "NULL");

    /** Whether nothing at all is written here. */
    boolean nothing() {
      return text.isBlank() || (style == Style.PLAIN && NOTHING.contains(text));
    }
  }

  /** A list. */
  record Sequence(Location at, List<Piece> items) implements Piece {
    public Sequence {
      items = List.copyOf(items);
    }
  }

  /** A group of keys, as written: a key may stand there twice. */
  record Mapping(Location at, List<Entry> entries) implements Piece {
    public Mapping {
      entries = List.copyOf(entries);
    }
  }

  /** One key with its value. */
  record Entry(Scalar key, Piece value) {}

  /** What may not stand in content at all, such as an alias. */
  record Refused(Location at, Problem problem) implements Piece {}
}
