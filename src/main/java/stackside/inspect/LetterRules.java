package stackside.inspect;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.render.ViewingAngle;
import stackside.render.plan.Phrase;

/** Letters and lines are large enough, and the typeface is embedded. */
final class LetterRules {

  private static final double LEAST_SMALL = 2.54;

  private static final double LEAST_BODY = 12;

  private static final double LEAST_FOOTER = 10;

  private static final double LEAST_PITCH = 1.25;

  private static final int MOST_LETTERS = 70;

  private static final Pattern SLANTED = Pattern.compile("(?i)italic|oblique");

  private static final Pattern BROKEN = Pattern.compile("\\p{L}[-\u00ad\u2010]$");

  private static final int MOST_FAMILIES = 2;

  private LetterRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "near-letters-too-low",
            "capitals on a card are too small to read at arm's length",
            LetterRules::nearLettersTooLow),
        error(
            "far-letters-too-low",
            "what must be read from afar is too small",
            LetterRules::farLettersTooLow),
        error(
            "small-letters-too-low",
            "small letters on a card are less than 2.54 mm high",
            LetterRules::smallLettersTooLow),
        error(
            "type-too-small",
            "type on a card is smaller than 12 points, or 10 in the footer",
            LetterRules::typeTooSmall),
        error(
            "lines-too-close",
            "lines on a card are closer than 1.25 times their type size",
            LetterRules::linesTooClose),
        error(
            "card-line-too-long",
            "a line on a card has more than 70 letters",
            LetterRules::cardLineTooLong),
        error(
            "slanted-or-turned-words",
            "words on a card are slanted, turned or broken with a hyphen",
            LetterRules::slantedOrTurnedWords),
        error(
            "font-not-embedded",
            "a card uses a font that is not embedded, or more than two families",
            LetterRules::fontNotEmbedded));
  }

  private static List<Finding> nearLettersTooLow(InspectedCard card) {
    double near = card.distance().near().value().value();
    double least = ViewingAngle.LEAST.height(near);
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double high = card.seen().capital(words);
      if (!card.inFooter(words) && high < least - Height.HAIR) {
        found.add(
            Finding.at(
                card.at(words),
                "the capitals of '"
                    + words.text()
                    + "' are "
                    + Height.words(high)
                    + " high, and "
                    + Height.words(least)
                    + " is the least at "
                    + card.distance().near().value()));
      }
    }
    return found;
  }

  /**
   * Finds identity, make-safe lines, drill titles and telephone numbers that look smaller than 16
   * minutes of arc from the far reading distance.
   */
  private static List<Finding> farLettersTooLow(InspectedCard card) {
    double least = ViewingAngle.LEAST.height(card.distance().far().value().value());
    List<Finding> found = new ArrayList<>();
    card.far().forEach(phrase -> farLettersTooLow(card, phrase, least, found));
    return found;
  }

  private static void farLettersTooLow(
      InspectedCard card, Phrase phrase, double least, List<Finding> found) {
    double high =
        card.seen().words().stream()
            .filter(words -> words.text().contains(InspectedCard.spaced(phrase.words())))
            .mapToDouble(card.seen()::capital)
            .max()
            .orElse(0);
    if (high < least - Height.HAIR) {
      found.add(
          Finding.at(
              phrase.at(),
              "the capitals of '"
                  + phrase.words()
                  + "' are "
                  + Height.words(high)
                  + " high, and "
                  + Height.words(least)
                  + " is the least at "
                  + card.distance().far().value()));
    }
  }

  private static List<Finding> smallLettersTooLow(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double high = card.seen().small(words);
      if (!card.inFooter(words) && high < LEAST_SMALL - Height.HAIR) {
        found.add(
            Finding.at(
                card.at(words),
                "the small letters of '" + words.text() + "' are " + Height.words(high) + " high"));
      }
    }
    return found;
  }

  private static List<Finding> typeTooSmall(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double least = card.inFooter(words) ? LEAST_FOOTER : LEAST_BODY;
      if (words.points() < least - 0.01) {
        found.add(
            Finding.at(
                card.at(words),
                "'" + words.text() + "' is set in " + Height.number(words.points()) + " points"));
      }
    }
    return found;
  }

  private static List<Finding> linesTooClose(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (PrintedWords upper : words) {
      for (PrintedWords lower : words) {
        if (isBelow(upper, lower) && pitch(upper, lower) < LEAST_PITCH - 0.01) {
          found.add(
              Finding.at(
                  card.at(lower),
                  "'" + lower.text() + "' is too close below '" + upper.text() + "'"));
        }
      }
    }
    return found;
  }

  /** Base line to base line, in sizes of the lower line. */
  private static double pitch(PrintedWords upper, PrintedWords lower) {
    return (lower.base() - upper.base()) / (lower.points() * PdfReader.MILLIMETRES);
  }

  private static boolean isBelow(PrintedWords upper, PrintedWords lower) {
    boolean sameColumn =
        upper.box().left() < lower.box().right() && lower.box().left() < upper.box().right();
    return sameColumn && upper.roles().equals(lower.roles()) && lower.base() - upper.base() > 0.5;
  }

  private static List<Finding> cardLineTooLong(InspectedCard card) {
    return card.seen().words().stream()
        .filter(words -> words.text().length() > MOST_LETTERS)
        .map(
            words ->
                Finding.at(
                    card.at(words),
                    "the line '" + words.text() + "' has " + words.text().length() + " letters"))
        .toList();
  }

  private static List<Finding> slantedOrTurnedWords(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      if (SLANTED.matcher(words.font()).find()) {
        found.add(Finding.at(card.at(words), "'" + words.text() + "' is set in italics"));
      }
      if (!words.upright()) {
        found.add(Finding.at(card.at(words), "'" + words.text() + "' is turned"));
      }
      if (BROKEN.matcher(words.text()).find()) {
        found.add(Finding.at(card.at(words), "'" + words.text() + "' ends in a hyphen"));
      }
    }
    return found;
  }

  private static List<Finding> fontNotEmbedded(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (EmbeddedFont font : card.seen().fonts()) {
      if (!font.embedded()) {
        found.add(Finding.at(card.at(), card.name() + " does not embed its font " + font.bare()));
      }
    }
    List<String> families =
        card.seen().fonts().stream()
            .map(font -> font.bare().replaceFirst("-.*", ""))
            .distinct()
            .sorted()
            .toList();
    if (families.size() > MOST_FAMILIES) {
      found.add(Finding.at(card.at(), card.name() + " is set in " + String.join(", ", families)));
    }
    return found;
  }
}
