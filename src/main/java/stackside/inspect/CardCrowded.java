package stackside.inspect;

import java.util.List;
import java.util.stream.Stream;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cards without the white space that lets the eye find its place. */
final class CardCrowded implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "card-crowded",
          Severity.WARNING,
          "words and drawings cover more than 70 percent of a card");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double MOST = 0.7;
  private static final double FRAME = 190.0 * 277.0;

  @Override
  public List<Problem> problems(InspectedCard card) {
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
    return covered <= MOST
        ? List.of()
        : List.of(
            FAULT.at(
                card.at(),
                card.name() + " is covered to " + Math.round(covered * 100) + " percent"));
  }
}
