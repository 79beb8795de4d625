package stackside.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Stop;

/** Reads how people name a card or a generator: by name, number, code, or the address scanned. */
final class Named {
  private static final Pattern SCANNED = Pattern.compile("(?:.*/)?c/([^/#?]+)(?:[/#?].*)?");

  private Named() {}

  /** What is meant, as a stop names it, if it is this card or its generator. */
  static Optional<String> of(String written, CardEntry card) {
    String meant = written.strip().toLowerCase(Locale.ROOT);
    Matcher scanned = SCANNED.matcher(meant);
    String code = scanned.matches() ? scanned.group(1) : meant;
    if (code.equals(card.code())
        || meant.equals(card.name())
        || meant.equals(Stop.card(card.name()))) {
      return Optional.of(Stop.card(card.name()));
    }
    String asset = card.asset().toLowerCase(Locale.ROOT);
    return meant.equals(asset) || meant.equals(Stop.asset(asset))
        ? Optional.of(Stop.asset(card.asset()))
        : Optional.empty();
  }
}
