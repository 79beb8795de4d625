package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.ViewingAngle;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds identity, make-safe lines, drill titles and telephone numbers that look smaller than 16
 * minutes of arc from the far reading distance.
 */
final class FarLettersTooLow implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "far-letters-too-low", Severity.ERROR, "what must be read from afar is set too low");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    double least = ViewingAngle.LEAST.height(card.distance().far().value().value());
    List<Problem> problems = new ArrayList<>();
    card.far().forEach(phrase -> judge(card, phrase, least, problems));
    return problems;
  }

  private static void judge(
      InspectedCard card, Phrase phrase, double least, List<Problem> problems) {
    double high =
        card.seen().words().stream()
            .filter(words -> words.text().contains(InspectedCard.spaced(phrase.words())))
            .mapToDouble(card.seen()::capital)
            .max()
            .orElse(0);
    if (high < least - Height.HAIR) {
      problems.add(
          FAULT.at(
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
}
