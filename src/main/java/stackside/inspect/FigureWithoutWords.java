package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds drawings without words, tables without header cells and cards without headings. */
final class FigureWithoutWords implements CardRule {

  private static final Fault FAULT =
      new Fault("figure-without-words", Severity.ERROR, "a card cannot be followed by ear");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    List<StructureElement> structure = card.seen().structure();
    for (StructureElement element : structure) {
      if (element.role().equals("Figure") && element.alternative().orElse("").isBlank()) {
        problems.add(FAULT.at(card.at(), card.name() + " has a drawing without words"));
      }
      if (element.role().equals("TH") && element.scope().isEmpty()) {
        problems.add(FAULT.at(card.at(), "the header cell '" + element.text() + "' heads nothing"));
      }
    }
    if (structure.stream().noneMatch(element -> element.role().equals("H1"))) {
      problems.add(FAULT.at(card.at(), card.name() + " has no heading"));
    }
    return problems;
  }
}
