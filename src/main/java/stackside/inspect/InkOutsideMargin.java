package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds ink less than 6.5 mm from the edge of the page. */
final class InkOutsideMargin implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "ink-outside-margin", Severity.ERROR, "ink on a card lies where printers do not print");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double MARGIN = 6.5;

  @Override
  public List<Problem> problems(InspectedCard card) {
    Inspection seen = card.seen();
    Box printable = new Box(MARGIN, MARGIN, seen.width() - MARGIN, seen.height() - MARGIN);
    List<Problem> problems = new ArrayList<>();
    Stream.concat(
            seen.words().stream().map(PrintedWords::box),
            seen.areas().stream().map(PaintedArea::box))
        .filter(box -> !printable.holds(box))
        .findFirst()
        .ifPresent(
            box ->
                problems.add(
                    FAULT.at(
                        card.at(),
                        card.name()
                            + " has ink less than 6.5 mm from the edge, at "
                            + Height.words(box.left())
                            + " from the left and "
                            + Height.words(box.top())
                            + " from the top")));
    return problems;
  }
}
