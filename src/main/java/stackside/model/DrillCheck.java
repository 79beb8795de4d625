package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.Seconds;
import stackside.source.Location;

/**
 * One check of a drill, with what it mends and, where counted, what it costs and how often it was
 * the cause.
 *
 * @param wasTheCause times that this was the cause in the unit's fault log
 * @param after checks of the same drill, counted from 1, that must come first
 */
public record DrillCheck(
    Location at,
    @Key("do") Fact<String> action,
    Optional<Fact<String>> see,
    List<Fact<SingleFault>> mends,
    Optional<Fact<Seconds>> takes,
    Optional<Fact<Integer>> wasTheCause,
    List<Fact<Accessory>> needs,
    List<Fact<Integer>> after) {
  public DrillCheck {
    mends = List.copyOf(mends);
    needs = List.copyOf(needs);
    after = List.copyOf(after);
  }
}
