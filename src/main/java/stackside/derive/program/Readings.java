package stackside.derive.program;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stackside.model.Asset;
import stackside.model.ProgramReading;
import stackside.model.ServiceEvent;
import stackside.model.ThingId;
import stackside.model.Unit;

/** The last reading of every slot of every asset, sorted by asset and slot. */
public record Readings(List<SlotReading> last) {

  public Readings {
    last = List.copyOf(last);
  }

  /** The last readings on record. */
  public static Readings of(Unit unit) {
    return onDay(unit, LocalDate.MAX);
  }

  /** The last readings as of this day, ignoring later readings and events. */
  public static Readings onDay(Unit unit, LocalDate day) {
    Map<ThingId, Map<Integer, List<ProgramReading>>> rows = new TreeMap<>();
    for (ProgramReading row : unit.programReadings()) {
      if (!row.date().value().isAfter(day)) {
        rows.computeIfAbsent(row.asset().value().id(), id -> new TreeMap<>())
            .computeIfAbsent(row.slot().value(), slot -> new ArrayList<>())
            .add(row);
      }
    }
    Map<ThingId, Events> events = new LinkedHashMap<>();
    unit.assets().forEach(asset -> events.put(asset.id(), Events.of(unit, asset).until(day)));
    List<SlotReading> last = new ArrayList<>();
    rows.values().forEach(slots -> slots.values().forEach(all -> last.add(latest(all, events))));
    return new Readings(last);
  }

  private static SlotReading latest(List<ProgramReading> all, Map<ThingId, Events> events) {
    LocalDate date =
        all.stream().map(row -> row.date().value()).max(Comparator.naturalOrder()).orElseThrow();
    List<ProgramReading> rows =
        all.stream().filter(row -> row.date().value().equals(date)).toList();
    Asset asset = rows.get(0).asset().value();
    Optional<ServiceEvent> endedBy =
        Optional.ofNullable(events.get(asset.id())).flatMap(known -> known.endingAfter(date));
    return new SlotReading(asset, rows.get(0).slot().value(), date, rows, endedBy);
  }

  /** The last reading of a slot, whether or not it still counts. */
  public Optional<SlotReading> of(Asset asset, int slot) {
    return of(asset).stream().filter(reading -> reading.slot() == slot).findFirst();
  }

  /** The last readings of an asset by slot. */
  public List<SlotReading> of(Asset asset) {
    return last.stream().filter(reading -> reading.asset().id().equals(asset.id())).toList();
  }
}
