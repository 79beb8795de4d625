package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.coverage.Cell;
import stackside.model.CardPart;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds questions that a room offers and that none of its settings cards answers. */
final class AnswerMissingFromCard implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "answer-missing-from-card",
          Severity.ERROR,
          "something that a room offers is on none of its cards");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<CardPart> parts = card.plan().room().cards();
    if (parts.isEmpty()) {
      return List.of();
    }
    List<Problem> problems = new ArrayList<>();
    for (Cell cell :
        card.publication().analysis().coverage().of(card.plan().room(), card.plan().asset())) {
      if (parts.stream().noneMatch(part -> part.holds(cell.lesion(), cell.site()))) {
        problems.add(
            FAULT
                .at(
                    parts.get(0).at(),
                    "no card of "
                        + card.plan().room().title()
                        + " holds '"
                        + cell.lesion().title()
                        + "' at '"
                        + cell.site().title()
                        + "'")
                .note(cell.offer().at(), "the room offers it here")
                .help("add the lesion and the site to one of the room's cards"));
      }
    }
    return problems;
  }
}
