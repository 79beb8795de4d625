package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cells that leave open whether nothing was meant or something was forgotten. */
final class EmptyCell implements CardRule {

  private static final Fault FAULT =
      new Fault("empty-cell", Severity.ERROR, "a cell of a card's table is empty");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.seen().structure().stream()
        .filter(element -> element.role().equals("TD") || element.role().equals("TH"))
        .filter(element -> element.text().isBlank())
        .map(element -> FAULT.at(card.at(), card.name() + " has an empty cell"))
        .toList();
  }
}
