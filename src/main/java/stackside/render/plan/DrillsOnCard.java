package stackside.render.plan;

import java.util.Comparator;
import java.util.List;
import stackside.derive.circuit.Circuits;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Asset;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.model.Unit;

/**
 * The drills on the card of a generator in a room, sorted by the worst outcome that their sign can
 * mean there: unnoticed first, then noticeable, then stopped with an alarm, and last signs that no
 * circuit fault produces. Drills of one class keep the content order.
 */
final class DrillsOnCard {

  /** How many drills a card shows if the content does not say which. */
  private static final int DRILLS = 2;

  private final Unit unit;
  private final Circuits circuits;

  DrillsOnCard(Unit unit, Circuits circuits) {
    this.unit = unit;
    this.circuits = circuits;
  }

  List<Drill> of(Room room, Asset asset) {
    List<FailureSign> signs = circuits.signsIn(room, asset);
    List<Drill> all =
        unit.drillsFor(asset.machine().value()).stream()
            .sorted(Comparator.comparing((Drill drill) -> worst(drill, signs)))
            .toList();
    List<Drill> chosen = all.stream().filter(DrillsOnCard::onCard).toList();
    return chosen.isEmpty() ? all.stream().limit(DRILLS).toList() : chosen;
  }

  private static boolean onCard(Drill drill) {
    return drill.onCard().map(Fact::value).orElse(false);
  }

  /** The worst class among the faults that have the drill's sign. */
  private static OutcomeClass worst(Drill drill, List<FailureSign> signs) {
    return signs.stream()
        .filter(sign -> sign.fitting().stream().anyMatch(each -> each.id().equals(drill.id())))
        .map(FailureSign::outcomeClass)
        .min(Comparator.naturalOrder())
        .orElse(OutcomeClass.RIGHT);
  }
}
