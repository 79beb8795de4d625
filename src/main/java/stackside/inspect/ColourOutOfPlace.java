package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.render.Ink;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds colour outside the drawings, and colours other than the yellow and blue of pedals. */
final class ColourOutOfPlace implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "colour-out-of-place",
          Severity.ERROR,
          "colour stands elsewhere than in the drawings of sockets and pedals");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final List<Colour> PEDALS =
      Stream.of(Ink.YELLOW, Ink.BLUE)
          .map(ink -> new Colour(ink.red(), ink.green(), ink.blue()))
          .toList();

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      if (words.colour().coloured()) {
        problems.add(
            FAULT.at(card.at(words), "'" + words.text() + "' is set in " + words.colour()));
      }
    }
    for (PaintedArea area : card.seen().areas()) {
      Stream.concat(area.fill().stream(), area.outline().stream())
          .filter(Colour::coloured)
          .filter(colour -> !area.inFigure() || !PEDALS.contains(colour))
          .forEach(
              colour ->
                  problems.add(
                      FAULT.at(card.at(), card.name() + " uses " + colour + " out of place")));
    }
    return problems;
  }
}
