package stackside.quantity;

/** The load resistances over which a machine's output is published, both ends included. */
public record LoadRange(Ohms from, Ohms to) {

  public LoadRange {
    if (from.value() <= 0 || from.value() >= to.value()) {
      throw new IllegalArgumentException("no such load range: " + from + " to " + to);
    }
  }

  /**
   * Reads "50 ohm to 2000 ohm".
   *
   * @throws UnreadableQuantity if the text is not such a range
   */
  public static LoadRange parse(String text) {
    int to = text.indexOf(" to ");
    if (to < 0) {
      throw new UnreadableQuantity(
          "'" + text + "' is not a range of loads", "write 'LOWEST to HIGHEST', each with ohm");
    }
    Ohms low = Ohms.MEASURE.parse(text.substring(0, to));
    Ohms high = Ohms.MEASURE.parse(text.substring(to + 4));
    if (low.value() <= 0 || low.value() >= high.value()) {
      throw new UnreadableQuantity(
          "'" + text + "' is not a range of loads", "write the smaller load first, over 0 ohm");
    }
    return new LoadRange(low, high);
  }

  public boolean holds(Ohms load) {
    return from.value() <= load.value() && load.value() <= to.value();
  }

  /** The range as an author writes it. */
  public String text() {
    return from.text() + " to " + to.text();
  }
}
