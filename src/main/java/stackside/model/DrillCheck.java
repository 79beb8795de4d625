package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.Seconds;
import stackside.source.Location;

/**
 * One check of a drill and what it mends. Where the unit has counted, it also gives how long the
 * check takes and how often it was the cause.
 *
 * @param wasTheCause how often this was the cause, according to the unit's fault log
 * @param after checks of the same drill, counted from 1, that must be done first
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
