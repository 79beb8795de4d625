package stackside.content;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * A piece of content as it was written, before anybody knows what it means. YAML and CSV both turn
 * into pieces; binding turns pieces into records.
 */
sealed interface SourceNode {
  Location at();

  /** All that it says, in one line. Two pieces with the same words say the same. */
  String words();

  /** Whether it is a list or a group with nothing in it. */
  boolean isEmpty();

  /** Why this may not be in content at all, or empty if it may. */
  default Optional<Problem> refusal() {
    return Optional.empty();
  }

  /** How a text is written in its file, which decides where its parts are. */
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
  record Scalar(Location at, String text, Style style, int lastLine) implements SourceNode {
    private static final Set<String> NOTHING = Set.of("~", "null", "Null", "NULL");

    /** Whether nothing at all is written here. */
    boolean nothing() {
      return text.isBlank() || (style == Style.PLAIN && NOTHING.contains(text));
    }

    @Override
    public String words() {
      return text.strip();
    }

    @Override
    public boolean isEmpty() {
      return false;
    }
  }

  /** A list. */
  record Sequence(Location at, List<SourceNode> items) implements SourceNode {
    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return items.stream().map(SourceNode::words).collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public boolean isEmpty() {
      return items.isEmpty();
    }
  }

  /** A group of keys, as written. A key may be there twice. */
  record Mapping(Location at, List<Entry> entries) implements SourceNode {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String words() {
      return entries.stream()
          .map(entry -> entry.key().words() + ": " + entry.value().words())
          .collect(Collectors.joining(", ", "{", "}"));
    }

    @Override
    public boolean isEmpty() {
      return entries.isEmpty();
    }
  }

  /** One key with its value. */
  record Entry(Scalar key, SourceNode value) {}

  /** What may not be in content at all, such as an alias. */
  record Refused(Location at, Problem problem) implements SourceNode {
    @Override
    public String words() {
      return "";
    }

    @Override
    public boolean isEmpty() {
      return false;
    }

    @Override
    public Optional<Problem> refusal() {
      return Optional.of(problem);
    }
  }
}
