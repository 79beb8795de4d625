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
 * The drills on the card of a generator in a room, by the worst of what their sign can mean there:
 * what passes unnoticed first, then what is noticeable, then what stops with an alarm, and last a
 * sign that no fault of the circuit shows. Drills of one class stay in the order of the content.
 */
final class DrillsOnCard {

  /** How many drills stand on a card where the content does not say which. */
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

  /** The worst class of a fault whose sign is the drill's. */
  private static OutcomeClass worst(Drill drill, List<FailureSign> signs) {
    return signs.stream()
        .filter(sign -> sign.fitting().stream().anyMatch(each -> each.id().equals(drill.id())))
        .map(FailureSign::outcomeClass)
        .min(Comparator.naturalOrder())
        .orElse(OutcomeClass.RIGHT);
  }
}
