package stackside.derive.program;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.ServiceEvent;
import stackside.model.Unit;

/** What happened to one asset, earliest first. */
public record Events(List<ServiceEvent> all) {

  public Events {
    all = List.copyOf(all);
  }

  /** Everything recorded about an asset. */
  public static Events of(Unit unit, Asset asset) {
    return new Events(
        unit.eventsOf(asset).stream()
            .sorted(Comparator.comparing(event -> event.date().value()))
            .toList());
  }

  /** What had happened by the end of a day. */
  public Events until(LocalDate day) {
    return new Events(all.stream().filter(event -> !event.date().value().isAfter(day)).toList());
  }

  /**
   * The latest event after a day. Readings and checks up to that day no longer count. A loan also
   * invalidates them, because the generator was used by people who do not report to the unit.
   * Readings taken on the day of an event count, because programs are read back after the work is
   * done.
   */
  public Optional<ServiceEvent> endingAfter(LocalDate day) {
    return all.stream()
        .filter(event -> event.date().value().isAfter(day))
        .reduce((earlier, later) -> later);
  }
}
