package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds type under the floor that holds whatever the font. */
final class TypeTooSmall implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "type-too-small",
          Severity.ERROR,
          "type on a card is smaller than 12 points, or 10 in the footer");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double BODY = 12;
  private static final double FOOTER = 10;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double least = card.inFooter(words) ? FOOTER : BODY;
      if (words.points() < least - 0.01) {
        problems.add(
            FAULT.at(
                card.at(words),
                "'" + words.text() + "' is set in " + Height.number(words.points()) + " points"));
      }
    }
    return problems;
  }
}
