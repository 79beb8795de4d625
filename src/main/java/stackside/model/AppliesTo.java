package stackside.model;

import java.util.List;
import stackside.source.Location;

/** The machines that something applies to; an empty list means all. */
public record AppliesTo(Location at, List<Fact<Machine>> machines) {
  public AppliesTo {
    machines = List.copyOf(machines);
  }

  public boolean holds(Machine machine) {
    return machines.isEmpty()
        || machines.stream().anyMatch(each -> each.value().id().equals(machine.id()));
  }
}
