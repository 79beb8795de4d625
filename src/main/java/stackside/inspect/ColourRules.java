package stackside.inspect;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.render.Ink;

/** Contrast, and colour that carries a meaning. */
final class ColourRules {

  private static final double LEAST_CONTRAST = 7;

  private static final double LEAST_CONTRAST_LARGE = 4.5;

  private static final int MOST_REVERSED = 5;

  private static final double SWATCH_CONTRAST = 3;

  private static final double OUTLINE = 0.5;

  private static final double BESIDE = 25;

  private static final double LEAST_IN_GREY = 20;

  private static final List<Colour> PEDALS =
      Stream.of(Ink.YELLOW, Ink.BLUE)
          .map(ink -> new Colour(ink.red(), ink.green(), ink.blue()))
          .toList();

  private ColourRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "text-contrast-too-low",
            "words on a card stand out too little from their background",
            ColourRules::textContrastTooLow),
        error(
            "long-reversed-text",
            "more than five light words are on a dark background",
            ColourRules::longReversedText),
        error(
            "swatch-without-outline",
            "a coloured area neither stands out nor has a dark outline",
            ColourRules::swatchWithoutOutline),
        error(
            "colour-without-word",
            "a colour on a card is not also given in words",
            ColourRules::colourWithoutWord),
        error(
            "fills-alike-in-grey",
            "two colours that mean different things look alike in grey",
            ColourRules::fillsAlikeInGrey),
        error(
            "colour-out-of-place",
            "colour is used outside the drawings of sockets and pedals",
            ColourRules::colourOutOfPlace));
  }

  private static List<Finding> textContrastTooLow(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double contrast = words.colour().contrast(card.seen().ground(words));
      if (contrast < (isLarge(words) ? LEAST_CONTRAST_LARGE : LEAST_CONTRAST)) {
        found.add(
            Finding.at(
                card.at(words),
                "'"
                    + words.text()
                    + "' stands out "
                    + Height.number(contrast)
                    + " to 1 from its background"));
      }
    }
    return found;
  }

  private static boolean isLarge(PrintedWords words) {
    return words.points() >= 18 || (words.points() >= 14 && words.font().contains("Bold"));
  }

  private static List<Finding> longReversedText(InspectedCard card) {
    return card.seen().words().stream()
        .filter(words -> words.colour().lightness() > card.seen().ground(words).lightness())
        .filter(words -> words.text().split(" ", -1).length > MOST_REVERSED)
        .map(words -> Finding.at(card.at(words), "'" + words.text() + "' is light on dark"))
        .toList();
  }

  private static List<Finding> swatchWithoutOutline(InspectedCard card) {
    return card.seen().areas().stream()
        .filter(area -> area.fill().filter(Colour::coloured).isPresent())
        .filter(area -> !standsOut(area.fill().orElseThrow()) && !outlined(area))
        .map(
            area ->
                Finding.at(
                    card.at(),
                    card.name()
                        + " has an area in "
                        + area.fill().orElseThrow()
                        + " without a dark outline of 0.5 mm"))
        .toList();
  }

  private static boolean standsOut(Colour fill) {
    return fill.contrast(Colour.WHITE) >= SWATCH_CONTRAST;
  }

  private static boolean outlined(PaintedArea area) {
    return area.line() >= OUTLINE - 0.01
        && area.outline().filter(line -> line.contrast(Colour.WHITE) >= 7).isPresent();
  }

  private static List<Finding> colourWithoutWord(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PaintedArea area : card.seen().areas()) {
      if (area.fill().filter(Colour::coloured).isPresent()) {
        String word = wordFor(area.fill().orElseThrow());
        if (!isSaid(card, area, word)
            || !(isSaid(card, area, "cut") || isSaid(card, area, "coagulation"))) {
          found.add(
              Finding.at(
                  card.at(),
                  card.name()
                      + " has a "
                      + word
                      + " area without '"
                      + word
                      + "' and what it does"));
        }
      }
    }
    return found;
  }

  private static String wordFor(Colour colour) {
    return colour.blue() > colour.red() ? "blue" : "yellow";
  }

  private static boolean isSaid(InspectedCard card, PaintedArea area, String word) {
    return card.seen().words().stream()
        .filter(words -> words.roles().equals(area.roles()))
        .filter(words -> words.text().toLowerCase(Locale.ROOT).contains(word))
        .anyMatch(
            words ->
                words.box().left() < area.box().right()
                    && area.box().left() < words.box().right()
                    && Math.abs(words.box().top() - area.box().bottom()) < BESIDE);
  }

  private static List<Finding> fillsAlikeInGrey(InspectedCard card) {
    List<Colour> fills =
        card.seen().areas().stream()
            .flatMap(area -> area.fill().stream())
            .filter(Colour::coloured)
            .distinct()
            .toList();
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < fills.size(); i++) {
      for (Colour other : fills.subList(i + 1, fills.size())) {
        if (Math.abs(fills.get(i).lightness() - other.lightness()) < LEAST_IN_GREY) {
          found.add(
              Finding.at(
                  card.at(),
                  card.name() + " uses " + fills.get(i) + " and " + other + ", alike in grey"));
        }
      }
    }
    return found;
  }

  private static List<Finding> colourOutOfPlace(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      if (words.colour().coloured()) {
        found.add(Finding.at(card.at(words), "'" + words.text() + "' is set in " + words.colour()));
      }
    }
    for (PaintedArea area : card.seen().areas()) {
      Stream.concat(area.fill().stream(), area.outline().stream())
          .filter(Colour::coloured)
          .filter(colour -> !area.inFigure() || !PEDALS.contains(colour))
          .forEach(
              colour ->
                  found.add(
                      Finding.at(card.at(), card.name() + " uses " + colour + " out of place")));
    }
    return found;
  }
}
