package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.model.Asset;
import stackside.model.Drill;
import stackside.model.Room;
import stackside.model.SingleFault;

/**
 * All faults that look and sound alike on one generator in one room: somebody who sees the sign
 * cannot know which of them it is.
 *
 * @param lines the failure signs with this sign, worst first
 */
public record SharedSign(
    Room room, Asset asset, Observed observed, Tissue tissue, List<FailureSign> lines) {

  public SharedSign {
    lines = List.copyOf(lines);
  }

  private record Look(Observed observed, Tissue tissue) {}

  /** Groups the failure signs of one generator in one room; what comes to nothing is left out. */
  static List<SharedSign> among(List<FailureSign> signs) {
    Map<Look, List<FailureSign>> alike = new LinkedHashMap<>();
    for (FailureSign sign : signs) {
      if (sign.outcomeClass() != OutcomeClass.RIGHT) {
        alike
            .computeIfAbsent(new Look(sign.observed(), sign.tissue()), look -> new ArrayList<>())
            .add(sign);
      }
    }
    List<SharedSign> shared = new ArrayList<>();
    alike.forEach(
        (look, lines) -> {
          FailureSign first = lines.get(0);
          shared.add(
              new SharedSign(first.room(), first.asset(), look.observed(), look.tissue(), lines));
        });
    return shared;
  }

  /** The faults behind the sign, worst first, each once. */
  public List<SingleFault> faults() {
    return lines.stream().map(FailureSign::fault).distinct().toList();
  }

  /** The drills for the sign. */
  public List<Drill> drills() {
    return lines.get(0).fitting();
  }

  /** The faults behind the sign that no check of a drill mends. */
  public List<SingleFault> leftOpenBy(Drill drill) {
    return faults().stream()
        .filter(
            fault ->
                drill.checks().stream()
                    .flatMap(check -> check.mends().stream())
                    .noneMatch(mended -> mended.value() == fault))
        .toList();
  }

  /** The drills for the sign whose checks mend every fault behind it. */
  public List<Drill> shared() {
    return drills().stream().filter(drill -> leftOpenBy(drill).isEmpty()).toList();
  }
}
