package stackside.derive.signed;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.model.LoggedRecord;
import stackside.model.OutputCheck;
import stackside.model.Premises;
import stackside.model.ProgramReading;
import stackside.model.ServiceEvent;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/**
 * Which thing a place in the content belongs to: the one that begins last before it.
 *
 * @param contacts the location of each contact, by the line of the contact in {@code unit.yaml}
 */
public record Subjects(
    SortedMap<String, NavigableMap<Integer, ThingId>> files,
    NavigableMap<Integer, ThingId> contacts) {

  public static Subjects of(Unit unit) {
    SortedMap<String, NavigableMap<Integer, ThingId>> files = new TreeMap<>();
    unit.things()
        .filter(Subjects::standsAlone)
        .forEach(thing -> put(files, thing.at(), thing.id()));
    Stream.of(
            unit.programReadings().stream().map(ProgramReading::asset),
            unit.serviceEvents().stream().map(ServiceEvent::asset),
            unit.outputChecks().stream().map(OutputCheck::asset),
            unit.withdrawn().stream().map(LoggedRecord::asset))
        .flatMap(assets -> assets)
        .forEach(asset -> put(files, asset.at(), asset.value().id()));
    NavigableMap<Integer, ThingId> contacts = new TreeMap<>();
    for (Premises location : unit.details().locations()) {
      location.contacts().forEach(each -> contacts.put(each.at().line(), location.id()));
    }
    return new Subjects(files, contacts);
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

  /**
   * The thing on whose own line a place of {@code unit.yaml} stands, or the location of its
   * contacts; absent for all else there, for it belongs to the unit as a whole.
   */
  public Optional<ThingId> within(Location place) {
    NavigableMap<Integer, ThingId> things = files.getOrDefault(place.file(), new TreeMap<>());
    return Optional.ofNullable(things.get(place.line()))
        .or(() -> Optional.ofNullable(contacts.get(place.line())))
        .or(() -> at(place).filter(thing -> stillBefore(place, thing)));
  }

  /** A location reaches down to the last of its contacts. */
  private boolean stillBefore(Location place, ThingId location) {
    return contacts.tailMap(place.line(), true).containsValue(location);
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
