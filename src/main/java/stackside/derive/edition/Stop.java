package stackside.derive.edition;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That a generator or a card must not be used. It stands through every issue until somebody lifts
 * it.
 *
 * @param what {@code asset:EQ-0417}, or {@code card:} with its name
 * @param why in words for everybody
 * @param role who said so; absent where a record showed it
 */
public record Stop(String what, String why, Optional<String> role, LocalDate since) {
  private static final String ASSET = "asset:";
  private static final String CARD = "card:";

  /** How a stop names a generator. */
  public static String asset(String number) {
    return ASSET + number;
  }

  /** How a stop names a card. */
  public static String card(String name) {
    return CARD + name;
  }

  /** Whether it is about all cards of a generator. */
  public boolean isAboutAsset(String number) {
    return what.equals(asset(number));
  }

  boolean isAboutCard(String name) {
    return what.equals(card(name));
  }

  /** Whether it is about this card, by its name or by its generator. */
  public boolean isAbout(CardEntry card) {
    return isAboutCard(card.name()) || isAboutAsset(card.asset());
  }

  /** The name of the card that it is about, if it is about one. */
  Optional<String> card() {
    return what.startsWith(CARD) ? Optional.of(what.substring(CARD.length())) : Optional.empty();
  }
}
