package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stackside.derive.program.Readings;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SingleFault;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Simulates every single fault in every approved answer with current, in every room and on every
 * generator where the answer is used.
 *
 * @param byRoom the results for each room
 */
public record Circuits(Map<ThingId, InRoom> byRoom) {

  public Circuits {
    byRoom = Collections.unmodifiableMap(new LinkedHashMap<>(byRoom));
  }

  /**
   * The results for one room.
   *
   * @param outcomes by asset, profile, fault
   * @param ofProfile the same outcomes, by profile
   * @param signs the same outcomes, summarised for each asset, worst first
   * @param shared the signs, grouped by what is seen and heard
   * @param unbuilt answers whose instrument reaches its socket by nothing that the room keeps
   */
  public record InRoom(
      List<FaultOutcome> outcomes,
      Map<ThingId, List<FaultOutcome>> ofProfile,
      List<FailureSign> signs,
      List<SharedSign> shared,
      List<Unbuilt> unbuilt) {
    public InRoom {
      outcomes = List.copyOf(outcomes);
      ofProfile = Collections.unmodifiableMap(new LinkedHashMap<>(ofProfile));
      signs = List.copyOf(signs);
      shared = List.copyOf(shared);
      unbuilt = List.copyOf(unbuilt);
    }

    static InRoom none() {
      return new InRoom(List.of(), Map.of(), List.of(), List.of(), List.of());
    }
  }

  /** An answer that cannot be set up in a room. */
  public record Unbuilt(Room room, Asset asset, Profile profile) {}

  /** Simulates every fault in every answer of a unit. */
  public static Circuits of(Unit unit) {
    Readings readings = Readings.of(unit);
    Map<ThingId, InRoom> byRoom = new LinkedHashMap<>();
    unit.rooms().parallelStream()
        .map(room -> Map.entry(room.id(), of(unit, readings, room)))
        .forEachOrdered(each -> byRoom.put(each.getKey(), each.getValue()));
    return new Circuits(byRoom);
  }

  private static InRoom of(Unit unit, Readings readings, Room room) {
    List<FaultOutcome> outcomes = new ArrayList<>();
    List<FailureSign> signs = new ArrayList<>();
    List<SharedSign> shared = new ArrayList<>();
    List<Unbuilt> unbuilt = new ArrayList<>();
    for (Fact<Asset> standing : room.assets()) {
      Asset asset = standing.value();
      List<FaultOutcome> here = outcomes(unit, readings, room, asset, unbuilt);
      outcomes.addAll(here);
      List<FailureSign> lines = FailureSigns.of(unit, here);
      signs.addAll(lines);
      shared.addAll(SharedSign.among(lines));
    }
    Map<ThingId, List<FaultOutcome>> ofProfile =
        outcomes.stream().collect(Collectors.groupingBy(outcome -> outcome.profile().id()));
    return new InRoom(outcomes, ofProfile, signs, shared, unbuilt);
  }

  private static List<FaultOutcome> outcomes(
      Unit unit, Readings readings, Room room, Asset asset, List<Unbuilt> unbuilt) {
    KnownPrograms programs = KnownPrograms.of(unit, readings, asset);
    List<FaultOutcome> outcomes = new ArrayList<>();
    for (Profile profile : unit.profilesServing(room)) {
      if (profile.machine().value().id().equals(asset.machine().value().id())
          && profile.settings().stream().anyMatch(settings -> !settings.assigned().isEmpty())) {
        Optional<SetUp> setUp = SetUp.of(unit, room, asset, profile, programs);
        setUp.ifPresentOrElse(
            built -> outcomes.addAll(allFaults(built)),
            () -> unbuilt.add(new Unbuilt(room, asset, profile)));
      }
    }
    return outcomes;
  }

  private static List<FaultOutcome> allFaults(SetUp setUp) {
    Pressing pressing = new Pressing(setUp);
    List<FaultOutcome> outcomes = new ArrayList<>();
    for (SingleFault fault : SingleFault.values()) {
      setUp.waysOf(fault).forEach(way -> outcomes.add(pressing.outcome(way)));
    }
    return outcomes;
  }

  public List<FaultOutcome> outcomes() {
    return all(InRoom::outcomes);
  }

  public List<FailureSign> signs() {
    return all(InRoom::signs);
  }

  public List<SharedSign> shared() {
    return all(InRoom::shared);
  }

  public List<Unbuilt> unbuilt() {
    return all(InRoom::unbuilt);
  }

  private <T> List<T> all(Function<InRoom, List<T>> part) {
    return byRoom.values().stream().flatMap(each -> part.apply(each).stream()).toList();
  }

  private InRoom in(Room room) {
    return byRoom.getOrDefault(room.id(), InRoom.none());
  }

  /** The failure signs of one generator in one room, worst first. */
  public List<FailureSign> signsIn(Room room, Asset asset) {
    return in(room).signs().stream().filter(sign -> sign.asset().id().equals(asset.id())).toList();
  }

  /** The outcomes of a profile in a room, in the order of the faults. */
  public List<FaultOutcome> outcomesOf(Profile profile, Room room) {
    return in(room).ofProfile().getOrDefault(profile.id(), List.of());
  }

  /** The outcomes of plugging a profile's instrument into a wrong socket. */
  public List<FaultOutcome> wrongSockets(Profile profile, Room room) {
    return outcomesOf(profile, room).stream()
        .filter(outcome -> outcome.fault() == SingleFault.INSTRUMENT_IN_WRONG_SOCKET)
        .toList();
  }
}
