package stackside.render.card;

import java.time.LocalDate;
import java.util.List;
import stackside.Units;
import stackside.derive.Analysis;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;

/** The demonstration unit's cards, as a draft for a fixed day. */
final class Demonstration {

  private Demonstration() {}

  static Publication publication() {
    return new Publication(
        Analysis.of(Units.demonstration()),
        List.of(),
        List.of(),
        Marking.DRAFT,
        LocalDate.of(2026, 11, 25));
  }

  static List<CardPlan> plans() {
    return CardPlanner.plans(publication());
  }

  static List<OutputFile> cards() {
    return CardRenderer.render(publication()).printed();
  }
}
