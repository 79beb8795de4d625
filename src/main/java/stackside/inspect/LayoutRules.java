package stackside.inspect;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;

/** Where things stand on the page. */
final class LayoutRules {

  private static final double PAGE_TOLERANCE = 25.4 / 72;

  private static final double PRINTER_MARGIN = 6.5;

  private static final double WORDS_MARGIN = 10;

  private static final double FAR = 20;

  /** Where words begin, and their size, to a tenth of a millimetre. */
  private record Spot(long left, long base, long points) {
    static Spot of(PrintedWords words) {
      return new Spot(
          Math.round(words.box().left() * 10),
          Math.round(words.base() * 10),
          Math.round(words.points() * 10));
    }
  }

  private static final double MOST_COVERED = 0.7;

  private static final double FRAME = 190.0 * 277.0;

  private LayoutRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "card-not-one-page", "a card is not exactly one A4 page", LayoutRules::cardNotOnePage),
        error(
            "words-overlap",
            "words on a card overlap other words or cross a line",
            LayoutRules::wordsOverlap),
        error(
            "ink-outside-margin",
            "ink on a card is where printers do not print",
            LayoutRules::inkOutsideMargin),
        warning(
            "words-near-edge",
            "words on a card are where a thumb or a clip covers them",
            LayoutRules::wordsNearEdge),
        error(
            "value-far-from-label",
            "a value is far from its label, with nothing to lead the eye",
            LayoutRules::valueFarFromLabel),
        error(
            "fixed-part-moved",
            "what a nurse finds by habit is elsewhere on this card",
            LayoutRules::fixedPartMoved),
        warning(
            "card-crowded",
            "words and drawings cover more than 70 percent of a card",
            LayoutRules::cardCrowded));
  }

  private static List<Finding> cardNotOnePage(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    Inspection seen = card.seen();
    if (seen.pages() != 1) {
      found.add(Finding.at(card.at(), card.name() + " has " + seen.pages() + " pages"));
    }
    if (Math.abs(seen.width() - 210) > PAGE_TOLERANCE
        || Math.abs(seen.height() - 297) > PAGE_TOLERANCE) {
      found.add(
          Finding.at(
              card.at(),
              card.name()
                  + " is "
                  + Height.words(seen.width())
                  + " by "
                  + Height.words(seen.height())
                  + ", but A4 is 210 mm by 297 mm"));
    }
    return found;
  }

  private static List<Finding> wordsOverlap(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (int i = 0; i < words.size(); i++) {
      PrintedWords one = words.get(i);
      for (PrintedWords other : words.subList(i + 1, words.size())) {
        if (one.box().overlaps(other.box())) {
          found.add(
              Finding.at(card.at(one), "'" + one.text() + "' and '" + other.text() + "' overlap"));
        }
      }
      if (card.seen().areas().stream().anyMatch(area -> crosses(one, area))) {
        found.add(Finding.at(card.at(one), "'" + one.text() + "' crosses a line"));
      }
    }
    return found;
  }

  private static boolean crosses(PrintedWords words, PaintedArea area) {
    return words.box().overlaps(area.box()) && !area.box().holds(words.box());
  }

  private static List<Finding> inkOutsideMargin(InspectedCard card) {
    Inspection seen = card.seen();
    Box printable =
        new Box(
            PRINTER_MARGIN,
            PRINTER_MARGIN,
            seen.width() - PRINTER_MARGIN,
            seen.height() - PRINTER_MARGIN);
    List<Finding> found = new ArrayList<>();
    Stream.concat(
            seen.words().stream().map(PrintedWords::box),
            seen.areas().stream().map(PaintedArea::box))
        .filter(box -> !printable.holds(box))
        .findFirst()
        .ifPresent(
            box ->
                found.add(
                    Finding.at(
                        card.at(),
                        card.name()
                            + " has ink less than 6.5 mm from the edge, at "
                            + Height.words(box.left())
                            + " from the left and "
                            + Height.words(box.top())
                            + " from the top")));
    return found;
  }

  private static List<Finding> wordsNearEdge(InspectedCard card) {
    Inspection seen = card.seen();
    Box free =
        new Box(
            WORDS_MARGIN, WORDS_MARGIN, seen.width() - WORDS_MARGIN, seen.height() - WORDS_MARGIN);
    return seen.words().stream()
        .filter(words -> !free.holds(words.box()))
        .map(
            words ->
                Finding.at(
                    card.at(words), "'" + words.text() + "' is less than 10 mm from the edge"))
        .toList();
  }

  /**
   * Finds values more than 20 mm from their label without a row of dots between, and rows of a
   * table without a rule.
   */
  private static List<Finding> valueFarFromLabel(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (PrintedWords label : words) {
      for (PrintedWords value : words) {
        if (isPair(label, value) && !isLed(card, label, value)) {
          found.add(
              Finding.at(
                  card.at(label),
                  "'"
                      + value.text()
                      + "' is "
                      + Height.words(value.box().left() - label.box().right())
                      + " from '"
                      + label.text()
                      + "'"));
        }
      }
    }
    return found;
  }

  private static boolean isPair(PrintedWords label, PrintedWords value) {
    return label.roles().contains("LBody")
        && value.roles().contains("LBody")
        && Math.abs(label.base() - value.base()) < 0.1
        && value.box().left() - label.box().right() > FAR;
  }

  private static boolean isLed(InspectedCard card, PrintedWords label, PrintedWords value) {
    return card.seen().areas().stream()
        .anyMatch(
            area ->
                area.box().left() - label.box().right() < FAR / 4
                    && value.box().left() - area.box().right() < FAR / 4
                    && area.box().top() < label.base()
                    && area.box().bottom() > label.box().top());
  }

  /**
   * Finds identity, make-safe lines or contacts at another place or size than on the other cards of
   * the location.
   */
  private static List<Finding> fixedPartMoved(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    fixed(card).forEach(phrase -> fixedPartMoved(card, phrase, found));
    return found;
  }

  private static void fixedPartMoved(InspectedCard card, Phrase phrase, List<Finding> found) {
    Map<Spot, Integer> spots = new LinkedHashMap<>();
    for (Inspection fellow : card.fellows()) {
      find(fellow, phrase).ifPresent(words -> spots.merge(Spot.of(words), 1, Integer::sum));
    }
    Optional<Spot> usual =
        spots.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    Optional<Spot> here = find(card.seen(), phrase).map(Spot::of);
    if (usual.isPresent() && here.isPresent() && !usual.equals(here)) {
      found.add(
          Finding.at(
              card.at(),
              "'"
                  + phrase.words()
                  + "' is in a different place on "
                  + card.name()
                  + " from most cards of "
                  + card.plan().room().location().value().title()));
    }
  }

  private static Stream<Phrase> fixed(InspectedCard card) {
    return card.plan().blocks().stream().flatMap(LayoutRules::fixed);
  }

  private static Stream<Phrase> fixed(Block block) {
    if (block instanceof Block.Identity identity) {
      return Stream.of(identity.warning());
    }
    if (block instanceof Block.MakeSafe || block instanceof Block.Contacts) {
      return block.phrases();
    }
    if (block instanceof Block.Marks
        || block instanceof Block.Maps
        || block instanceof Block.Answers
        || block instanceof Block.SetUp
        || block instanceof Block.Drilled
        || block instanceof Block.Footer
        || block instanceof Block.Code) {
      return Stream.empty();
    }
    throw new IllegalStateException(
        "say in LayoutRules.fixed whether it has a fixed place: " + block);
  }

  private static Optional<PrintedWords> find(Inspection seen, Phrase phrase) {
    return seen.words().stream()
        .filter(words -> words.text().equals(InspectedCard.spaced(phrase.words())))
        .findFirst();
  }

  private static List<Finding> cardCrowded(InspectedCard card) {
    double covered =
        Stream.concat(
                    card.seen().words().stream()
                        .filter(words -> !words.inFigure())
                        .map(PrintedWords::box),
                    card.seen().areas().stream()
                        .filter(PaintedArea::inFigure)
                        .map(PaintedArea::box))
                .mapToDouble(box -> box.width() * box.height())
                .sum()
            / FRAME;
    return covered <= MOST_COVERED
        ? List.of()
        : List.of(
            Finding.at(
                card.at(), card.name() + " is " + Math.round(covered * 100) + " percent covered"));
  }
}
