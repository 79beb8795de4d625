package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.ViewingAngle;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds letters that look smaller than 16 minutes of arc from the near reading distance. */
final class NearLettersTooLow implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "near-letters-too-low",
          Severity.ERROR,
          "capitals on a card are too low to read at arm's length");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    double near = card.distance().near().value().value();
    double least = ViewingAngle.LEAST.height(near);
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double high = card.seen().capital(words);
      if (!card.inFooter(words) && high < least - Height.HAIR) {
        problems.add(
            FAULT.at(
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
    return problems;
  }
}
