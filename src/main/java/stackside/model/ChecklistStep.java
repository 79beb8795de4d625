package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/** One step of a checklist: what to do, what to see, what it guards against. */
public record ChecklistStep(
    Location at,
    @Key("do") Fact<String> action,
    Optional<Fact<String>> see,
    List<Fact<SingleFault>> guards) {
  public ChecklistStep {
    guards = List.copyOf(guards);
  }
}
