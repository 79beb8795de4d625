package stackside.model;

import stackside.quantity.Quantity;

/** Peak over root mean square; at least 1. */
public record CrestFactor(double value) {
  public CrestFactor {

    if (!(value >= 1 && value <= 100)) {
      throw new UnreadableText(
          "a crest factor is 1 or more, and '" + Quantity.number(value) + "' is not plausible",
          "write peak voltage divided by root mean square voltage");
    }
  }

  /**
   * Reads a plain number such as "1.6".
   *
   * @throws UnreadableText if the text is not a crest factor
   */
  public static CrestFactor parse(String text) {
    if (!text.strip().matches("(0|[1-9]\\d*)(\\.\\d+)?")) {
      throw new UnreadableText(
          "'" + text + "' is not a crest factor", "write a plain number; it has no unit");
    }
    return new CrestFactor(Double.parseDouble(text.strip()));
  }

  public String text() {
    return Quantity.number(value);
  }
}
