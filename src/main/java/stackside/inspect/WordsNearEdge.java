package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds words less than 10 mm from the edge of the page. */
final class WordsNearEdge implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "words-near-edge",
          Severity.WARNING,
          "words on a card stand where a thumb or a clip covers them");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double MARGIN = 10;

  @Override
  public List<Problem> problems(InspectedCard card) {
    Inspection seen = card.seen();
    Box free = new Box(MARGIN, MARGIN, seen.width() - MARGIN, seen.height() - MARGIN);
    return seen.words().stream()
        .filter(words -> !free.holds(words.box()))
        .map(
            words ->
                FAULT.at(
                    card.at(words), "'" + words.text() + "' stands less than 10 mm from the edge"))
        .toList();
  }
}
