package stackside.derive.signed;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.model.OutputCheck;
import stackside.model.ProgramReading;
import stackside.model.ServiceEvent;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/** Which thing a place in the content belongs to: the one that begins last before it. */
public record Subjects(SortedMap<String, NavigableMap<Integer, ThingId>> files) {

  public static Subjects of(Unit unit) {
    SortedMap<String, NavigableMap<Integer, ThingId>> files = new TreeMap<>();
    unit.things()
        .filter(Subjects::standsAlone)
        .forEach(thing -> put(files, thing.at(), thing.id()));
    Stream.of(
            unit.programReadings().stream().map(ProgramReading::asset),
            unit.serviceEvents().stream().map(ServiceEvent::asset),
            unit.outputChecks().stream().map(OutputCheck::asset))
        .flatMap(assets -> assets)
        .forEach(asset -> put(files, asset.at(), asset.value().id()));
    return new Subjects(files);
  }

  /** Sockets and modes belong to their machine, contacts to their location. */
  private static boolean standsAlone(Thing thing) {
    return switch (thing.id().kind()) {
      case SOCKET, MODE, CONTACT -> false;
      default -> true;
    };
  }

  private static void put(
      SortedMap<String, NavigableMap<Integer, ThingId>> files, Location at, ThingId thing) {
    files.computeIfAbsent(at.file(), file -> new TreeMap<>()).put(at.line(), thing);
  }

  /** The thing; absent where the place belongs to the unit as a whole. */
  public Optional<ThingId> at(Location place) {
    NavigableMap<Integer, ThingId> things = files.get(place.file());
    if (things == null) {
      return Optional.empty();
    }
    Map.Entry<Integer, ThingId> before = things.floorEntry(place.line());
    if (before != null) {
      return Optional.of(before.getValue());
    }
    boolean oneThing = things.values().stream().distinct().count() == 1;
    return oneThing ? Optional.of(things.firstEntry().getValue()) : Optional.empty();
  }
}
