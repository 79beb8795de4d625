package stackside.quantity;

import java.util.Optional;

/**
 * A half-open range of a quantity. It includes its lower end but not its upper one, so that "10 mm
 * to 20 mm" and "20 mm and over" meet without overlap. An absent end is open.
 */
public record Band<Q extends Quantity & Comparable<Q>>(Optional<Q> from, Optional<Q> below) {

  public Band {
    if (from.isPresent() && below.isPresent() && from.get().compareTo(below.get()) >= 0) {
      throw new IllegalArgumentException(
          "the range from " + from.get().text() + " to " + below.get().text() + " is empty");
    }
  }

  /**
   * Reads "10 mm to 20 mm", "20 mm and over", "under 10 mm" or "any".
   *
   * @throws UnreadableQuantity if the text is none of these
   */
  public static <Q extends Quantity & Comparable<Q>> Band<Q> parse(
      String text, Measure<Q> measure) {
    String words = text.strip();
    if (words.equals("any")) {
      return new Band<Q>(Optional.<Q>empty(), Optional.<Q>empty());
    }
    if (words.endsWith(" and over")) {
      String low = words.substring(0, words.length() - " and over".length());
      return new Band<>(Optional.of(measure.parse(low)), Optional.empty());
    }
    if (words.startsWith("under ")) {
      return new Band<>(Optional.empty(), Optional.of(measure.parse(words.substring(6))));
    }
    int to = words.indexOf(" to ");
    if (to < 0) {
      throw new UnreadableQuantity(
          "'" + text + "' is not a range of " + measure.noun().replaceFirst("^an? ", "") + "s",
          "write 'under A', 'A to B', 'B and over' or 'any', each with its unit");
    }
    Q from = measure.parse(words.substring(0, to));
    Q below = measure.parse(words.substring(to + 4));
    if (from.compareTo(below) >= 0) {
      throw new UnreadableQuantity(
          "'" + text + "' is an empty range: its upper end is not above its lower end",
          "write the smaller end first");
    }
    return new Band<>(Optional.of(from), Optional.of(below));
  }

  /** Whether the band contains this value. */
  public boolean holds(Q value) {
    return from.map(low -> low.compareTo(value) <= 0).orElse(true)
        && below.map(high -> value.compareTo(high) < 0).orElse(true);
  }

  /** Whether the two bands share a value. */
  public boolean overlaps(Band<Q> other) {
    return startsBeforeEndOf(other) && other.startsBeforeEndOf(this);
  }

  /** Whether this band contains every value of the other. */
  public boolean covers(Band<Q> other) {
    boolean low =
        from.isEmpty() || (other.from.isPresent() && from.get().compareTo(other.from.get()) <= 0);
    boolean high =
        below.isEmpty()
            || (other.below.isPresent() && other.below.get().compareTo(below.get()) <= 0);
    return low && high;
  }

  private boolean startsBeforeEndOf(Band<Q> other) {
    return from.isEmpty() || other.below.isEmpty() || from.get().compareTo(other.below.get()) < 0;
  }

  /** The band as an author writes it. */
  public String text() {
    if (from.isPresent() && below.isPresent()) {
      return from.get().text() + " to " + below.get().text();
    }
    return from.map(low -> low.text() + " and over")
        .or(() -> below.map(high -> "under " + high.text()))
        .orElse("any");
  }
}
