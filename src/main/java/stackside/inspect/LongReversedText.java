package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds light words on dark that are more than a label. */
final class LongReversedText implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "long-reversed-text",
          Severity.ERROR,
          "more than five light words stand on a dark ground");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 5;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.seen().words().stream()
        .filter(words -> words.colour().lightness() > card.seen().ground(words).lightness())
        .filter(words -> words.text().split(" ", -1).length > MOST)
        .map(words -> FAULT.at(card.at(words), "'" + words.text() + "' is light on dark"))
        .toList();
  }
}
