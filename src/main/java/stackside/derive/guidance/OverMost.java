package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Unit;
import stackside.quantity.Watts;

/**
 * A mode described as delivering more than 400 W, the maximum that high-frequency surgical
 * equipment may deliver averaged over a second (IEC 60601-2-2; from memory).
 */
public record OverMost(Machine machine, Mode mode, Fact<Watts> power) {

  public static final Watts MOST = new Watts(400);

  /** All such modes of a unit, judged by the highest limit and every rated power. */
  public static List<OverMost> of(Unit unit) {
    List<OverMost> over = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      for (Mode mode : machine.modes()) {
        powers(mode)
            .filter(power -> power.value().compareTo(MOST) > 0)
            .forEach(power -> over.add(new OverMost(machine, mode, power)));
      }
    }
    return over;
  }

  private static Stream<Fact<Watts>> powers(Mode mode) {
    Stream<Fact<Watts>> limit =
        mode.powerLimit().stream().map(range -> new Fact<>(range.value().to(), range.at()));
    Stream<Fact<Watts>> rated = mode.ratedPower().stream().flatMap(OverMost::each);
    return Stream.concat(limit, rated);
  }

  private static Stream<Fact<Watts>> each(ByLevel<Watts> byLevel) {
    return Stream.concat(byLevel.all().stream(), byLevel.each().values().stream());
  }
}
