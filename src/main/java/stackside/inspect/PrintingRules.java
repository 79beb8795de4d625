package stackside.inspect;

import static stackside.check.Rule.error;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.render.Drawing;
import stackside.render.Shape;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Location;

/** Whether all that was planned for a card was printed on it. */
final class PrintingRules {

  private PrintingRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "phrase-not-printed",
            "words that belong on a card are not printed on it",
            PrintingRules::phraseNotPrinted));
  }

  /** Finds phrases of the plan that the finished card prints less often than it should. */
  private static List<Finding> phraseNotPrinted(InspectedCard card) {
    Map<String, Location> planned = new LinkedHashMap<>();
    card.plan()
        .phrases()
        .forEach(phrase -> planned.putIfAbsent(InspectedCard.spaced(phrase.words()), phrase.at()));
    drawn(card).forEach(words -> planned.putIfAbsent(words, card.at()));
    List<String> all =
        Stream.concat(
                card.plan().phrases().map(Phrase::words).map(InspectedCard::spaced), drawn(card))
            .toList();
    String printed = card.seen().text();
    return planned.entrySet().stream()
        .filter(each -> !each.getKey().isBlank())
        .filter(each -> count(printed, each.getKey()) < wanted(all, each.getKey()))
        .map(each -> finding(card, each.getKey(), each.getValue()))
        .toList();
  }

  private static Stream<String> drawn(InspectedCard card) {
    return card.plan().blocks(Block.Maps.class).stream()
        .flatMap(maps -> Stream.concat(Stream.of(maps.sockets()), maps.pedals().stream()))
        .map(Drawing::shapes)
        .flatMap(List::stream)
        .filter(Shape.Words.class::isInstance)
        .map(shape -> InspectedCard.spaced(((Shape.Words) shape).text()));
  }

  /** How often the words must stand there: a phrase may hold another one. */
  private static int wanted(List<String> all, String words) {
    return all.stream().mapToInt(phrase -> count(phrase, words)).sum();
  }

  private static int count(String text, String words) {
    int count = 0;
    for (int at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
      count++;
    }
    return count;
  }

  private static Finding finding(InspectedCard card, String words, Location at) {
    return Finding.at(
            at, "'" + words + "' belongs on " + card.name() + ", but is not printed there")
        .help("do not hang up the card; this is a fault in the program, so report it");
  }
}
