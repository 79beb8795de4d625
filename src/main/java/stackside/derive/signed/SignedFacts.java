package stackside.derive.signed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.model.UnitPart;

/**
 * What a signature under one thing covers: a closed list of facts for each kind, under a version of
 * that list, with absent facts left out. When a fact joins the list, what was signed without it is
 * signed anew; unless it may be absent, for then only what has it is.
 *
 * @param facts the names and values, ready to be printed in canonical form
 */
public record SignedFacts(ThingId thing, SignedKind kind, Json.Members facts) {
  private static final int VERSION = 1;

  /** The facts of a thing; absent if things of its kind are not signed. */
  public static Optional<SignedFacts> of(Unit unit, Thing thing) {
    if (thing instanceof Profile profile) {
      return of(thing, SignedKind.PROFILE, ProfileFacts.of(unit, profile));
    }
    if (thing instanceof Machine machine) {
      return of(thing, SignedKind.MACHINE, MachineFacts.of(machine));
    }
    if (thing instanceof Drill drill) {
      return of(thing, SignedKind.DRILL, InstructionFacts.of(drill));
    }
    if (thing instanceof Checklist checklist) {
      return of(thing, SignedKind.CHECKLIST, InstructionFacts.of(checklist));
    }
    if (thing instanceof Room room) {
      return of(thing, SignedKind.ROOM, RoomFacts.of(unit.details(), room));
    }
    if (thing instanceof Asset asset) {
      return of(thing, SignedKind.ASSET, UnitFacts.of(asset));
    }
    return thing instanceof UnitPart part ? Optional.of(of(unit, part)) : Optional.empty();
  }

  private static SignedFacts of(Unit unit, UnitPart part) {
    return part.id().equals(unit.sources().id())
        ? new SignedFacts(part.id(), SignedKind.SOURCES, UnitFacts.sources(unit).json())
        : new SignedFacts(part.id(), SignedKind.POLICIES, UnitFacts.policies(unit).json());
  }

  private static Optional<SignedFacts> of(Thing thing, SignedKind kind, FactList facts) {
    return Optional.of(new SignedFacts(thing.id(), kind, facts.json()));
  }

  /**
   * The facts of everything in the unit that is signed: what holds for the whole unit first, then
   * machines, rooms last.
   */
  public static Stream<SignedFacts> allOf(Unit unit) {
    return Stream.of(
            List.of(unit.policies()),
            List.of(unit.sources()),
            unit.machines(),
            unit.assets(),
            unit.checklists(),
            unit.drills(),
            unit.profiles(),
            unit.rooms())
        .flatMap(things -> things.stream())
        .flatMap(thing -> of(unit, thing).stream());
  }

  /** What is signed, as JSON: the thing, the version of its list, the facts. */
  public Json.Members json() {
    return new FactList()
        .text("thing", thing.toString())
        .put("version", Json.number(VERSION))
        .put("facts", facts)
        .json();
  }

  public Fingerprint fingerprint() {
    return Fingerprint.of(json());
  }
}
