package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds colours that a black-and-white printer makes the same. */
final class FillsAlikeInGrey implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "fills-alike-in-grey",
          Severity.ERROR,
          "two colours that mean different things look alike in grey");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double LEAST = 20;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Colour> fills =
        card.seen().areas().stream()
            .flatMap(area -> area.fill().stream())
            .filter(Colour::coloured)
            .distinct()
            .toList();
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < fills.size(); i++) {
      for (Colour other : fills.subList(i + 1, fills.size())) {
        if (Math.abs(fills.get(i).lightness() - other.lightness()) < LEAST) {
          problems.add(
              FAULT.at(
                  card.at(),
                  card.name() + " uses " + fills.get(i) + " and " + other + ", alike in grey"));
        }
      }
    }
    return problems;
  }
}
