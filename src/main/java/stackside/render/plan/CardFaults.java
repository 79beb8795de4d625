package stackside.render.plan;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Severity;

/** What can go wrong while a plan becomes a page, before there is a page to check. */
public final class CardFaults {

  public static final Fault CARD_OVERFLOWS_PAGE =
      new Fault(
          "card-overflows-page",
          Severity.ERROR,
          "the contents of a card do not fit its page at a readable size");

  public static final Fault WORDS_TOO_WIDE_FOR_CARD =
      new Fault(
          "words-too-wide-for-card",
          Severity.ERROR,
          "words on a card do not fit their space at a readable size");

  public static final Fault LETTER_NOT_IN_FONT =
      new Fault(
          "letter-not-in-font",
          Severity.ERROR,
          "a card contains a letter that its typeface cannot print");

  public static final Fault ADDRESS_TOO_LONG_FOR_CODE =
      new Fault(
          "address-too-long-for-code",
          Severity.ERROR,
          "the unit's address is too long for a QR code that can be scanned from a card");

  private CardFaults() {}

  /** Every fault that can occur while a card is made. */
  public static List<Fault> all() {
    return List.of(
        CARD_OVERFLOWS_PAGE,
        WORDS_TOO_WIDE_FOR_CARD,
        LETTER_NOT_IN_FONT,
        ADDRESS_TOO_LONG_FOR_CODE);
  }
}
