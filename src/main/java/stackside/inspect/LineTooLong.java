package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lines from which the eye does not find back to the next. */
final class LineTooLong implements CardRule {

  private static final Fault FAULT =
      new Fault("line-too-long", Severity.ERROR, "a line on a card has more than 70 letters");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 70;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.seen().words().stream()
        .filter(words -> words.text().length() > MOST)
        .map(
            words ->
                FAULT.at(
                    card.at(words),
                    "the line '" + words.text() + "' has " + words.text().length() + " letters"))
        .toList();
  }
}
