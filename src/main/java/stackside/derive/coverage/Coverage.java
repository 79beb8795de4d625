package stackside.derive.coverage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Lesion;
import stackside.model.Offer;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Every question that the rooms' offers raise on every generator of the room, without duplicates.
 * The order is room, asset, lesion, site, step, patient group, as listed in the content.
 */
public record Coverage(Map<ThingId, List<Cell>> byRoom) {

  public Coverage {
    Map<ThingId, List<Cell>> copy = new LinkedHashMap<>();
    byRoom.forEach((room, cells) -> copy.put(room, List.copyOf(cells)));
    byRoom = Collections.unmodifiableMap(copy);
  }

  /** Raises all questions that follow from the offers of a unit's rooms. */
  public static Coverage of(Unit unit) {
    Map<ThingId, List<Cell>> byRoom = new LinkedHashMap<>();
    for (Room room : unit.rooms()) {
      List<Cell> cells = byRoom.computeIfAbsent(room.id(), id -> new ArrayList<>());
      for (Fact<Asset> asset : room.assets()) {
        ask(unit, room, asset.value(), cells);
      }
    }
    return new Coverage(byRoom);
  }

  /** The questions of all rooms. */
  public List<Cell> cells() {
    return all().toList();
  }

  private Stream<Cell> all() {
    return byRoom.values().stream().flatMap(List::stream);
  }

  public List<Cell> of(Room room) {
    return byRoom.getOrDefault(room.id(), List.of());
  }

  public List<Cell> of(Room room, Asset asset) {
    return of(room).stream().filter(cell -> same(cell.asset(), asset)).toList();
  }

  /**
   * The questions without an answer on any generator of their room; empty while a profile is
   * broken. Of two generators side by side, one may leave to the other what it is not meant for.
   */
  public List<Cell> gaps() {
    return all()
        .filter(cell -> cell.cover() instanceof Cover.Gap)
        .filter(cell -> of(cell.room()).stream().noneMatch(other -> answersInstead(cell, other)))
        .toList();
  }

  private static boolean answersInstead(Cell cell, Cell other) {
    return !other.cover().preferred().isEmpty()
        && same(cell.lesion(), other.lesion())
        && same(cell.site(), other.site())
        && same(cell.step(), other.step())
        && same(cell.patients(), other.patients());
  }

  /** The questions with two or more preferred answers. */
  public List<Cell> ambiguous() {
    return all().filter(cell -> cell.cover() instanceof Cover.Ambiguous).toList();
  }

  private static void ask(Unit unit, Room room, Asset asset, List<Cell> cells) {
    List<Profile> profiles = unit.profilesOn(asset.machine().value());
    Set<List<ThingId>> asked = new LinkedHashSet<>();
    for (Offer offer : room.offers()) {
      for (Fact<Lesion> lesion : offer.lesions()) {
        for (Site site : offer.allSites()) {
          for (Fact<Step> step : lesion.value().steps()) {
            for (Fact<PatientGroup> patients : room.patients()) {
              List<ThingId> question =
                  List.of(lesion.value().id(), site.id(), step.value().id(), patients.value().id());
              if (asked.add(question)) {
                cells.add(
                    new Cell(
                        room,
                        asset,
                        offer,
                        lesion.value(),
                        site,
                        step.value(),
                        patients.value(),
                        cover(unit, profiles, question)));
              }
            }
          }
        }
      }
    }
  }

  private static Cover cover(Unit unit, List<Profile> profiles, List<ThingId> question) {
    List<Profile> found =
        profiles.stream().filter(profile -> answers(unit, profile, question)).toList();
    List<Profile> preferred = found.stream().filter(Profile::preferred).toList();
    List<Profile> alternatives =
        found.stream().filter(profile -> profile.alternative().isPresent()).toList();
    if (preferred.size() > 1) {
      return new Cover.Ambiguous(preferred, alternatives);
    }
    if (preferred.size() == 1) {
      return new Cover.Answered(preferred.get(0), alternatives);
    }
    return unit.anyBroken(Kind.PROFILE)
        ? new Cover.Unclear(alternatives)
        : new Cover.Gap(alternatives);
  }

  private static boolean answers(Unit unit, Profile profile, List<ThingId> question) {
    return profile.lesions().stream().anyMatch(each -> is(each.value(), question.get(0)))
        && profile.allSites().stream().anyMatch(each -> is(each, question.get(1)))
        && is(profile.step().value(), question.get(2))
        && unit.patientsOf(profile).stream().anyMatch(each -> is(each, question.get(3)));
  }

  private static boolean is(Thing thing, ThingId id) {
    return thing.id().equals(id);
  }

  private static boolean same(Thing one, Thing other) {
    return one.id().equals(other.id());
  }
}
