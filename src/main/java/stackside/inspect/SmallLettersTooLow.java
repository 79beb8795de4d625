package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds words whose small letters are lower than a tenth of an inch. */
final class SmallLettersTooLow implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "small-letters-too-low",
          Severity.ERROR,
          "small letters on a card are lower than 2.54 mm");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double LEAST = 2.54;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double high = card.seen().small(words);
      if (!card.inFooter(words) && high < LEAST - Height.HAIR) {
        problems.add(
            FAULT.at(
                card.at(words),
                "the small letters of '" + words.text() + "' are " + Height.words(high) + " high"));
      }
    }
    return problems;
  }
}
