package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cards of another size or number of pages. */
final class CardNotOnePage implements CardRule {

  private static final Fault FAULT =
      new Fault("card-not-one-page", Severity.ERROR, "a card is not exactly one A4 page");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double TOLERANCE = 25.4 / 72;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    Inspection seen = card.seen();
    if (seen.pages() != 1) {
      problems.add(FAULT.at(card.at(), card.name() + " has " + seen.pages() + " pages"));
    }
    if (Math.abs(seen.width() - 210) > TOLERANCE || Math.abs(seen.height() - 297) > TOLERANCE) {
      problems.add(
          FAULT.at(
              card.at(),
              card.name()
                  + " is "
                  + Height.words(seen.width())
                  + " by "
                  + Height.words(seen.height())
                  + ", and A4 is 210 mm by 297 mm"));
    }
    return problems;
  }
}
