package stackside.model;

import stackside.quantity.Percent;

/** A share of a mode's rated power, written "10 percent of rated power". */
public record ShareOfRatedPower(Percent share) {

  private static final String TAIL = " of rated power";

  /**
   * Reads "10 percent of rated power".
   *
   * @throws UnreadableText if the text is not such a share
   */
  public static ShareOfRatedPower parse(String text) {
    String words = text.strip();
    if (!words.endsWith(TAIL)) {
      throw new UnreadableText(
          "'" + text + "' does not say what it is a share of",
          "write it as 'SHARE percent of rated power'");
    }
    return new ShareOfRatedPower(
        Percent.MEASURE.parse(words.substring(0, words.length() - TAIL.length())));
  }

  /** The share as an author writes it. */
  public String text() {
    return share.text() + TAIL;
  }
}
