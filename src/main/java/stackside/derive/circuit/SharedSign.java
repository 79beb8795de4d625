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
 * All faults that look and sound the same on one generator in one room. Somebody who sees the sign
 * cannot tell which of them it is.
 *
 * @param lines the failure signs with this sign, worst first
 */
public record SharedSign(
    Room room, Asset asset, Observation observed, Tissue tissue, List<FailureSign> lines) {

  public SharedSign {
    lines = List.copyOf(lines);
  }

  private record Look(Observation observed, Tissue tissue) {}

  /** Groups the failure signs of one generator in one room; leaves out faults without effect. */
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

  /** The faults that can cause the sign, worst first, without duplicates. */
  public List<SingleFault> faults() {
    return lines.stream().map(FailureSign::fault).distinct().toList();
  }

  /** The drills that have this sign. */
  public List<Drill> drills() {
    return lines.get(0).fitting();
  }

  /** The faults that can cause the sign but are mended by no check of this drill. */
  public List<SingleFault> leftOpenBy(Drill drill) {
    return faults().stream()
        .filter(
            fault ->
                drill.checks().stream()
                    .flatMap(check -> check.mends().stream())
                    .noneMatch(mended -> mended.value() == fault))
        .toList();
  }

  /** The drills with this sign whose checks mend every fault that can cause it. */
  public List<Drill> shared() {
    return drills().stream().filter(drill -> leftOpenBy(drill).isEmpty()).toList();
  }
}
