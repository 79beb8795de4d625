package stackside.derive.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stackside.model.Broken;
import stackside.model.Fact;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Severity;

/**
 * The part of a unit that may be shown on an issued site: what is wrong or not signed as it is now
 * stands in it as broken, together with what cannot be shown without it.
 */
public final class IssuedUnit {

  /** Stands on the page of a thing that is held back. */
  public static final Fault HELD_BACK =
      new Fault("held-back", Severity.NOTE, "a thing is not issued as it is written now");

  private final Unit unit;
  private final Set<ThingId> held;

  private IssuedUnit(Unit unit, Set<ThingId> held) {
    this.unit = unit;
    this.held = new TreeSet<>(held);
  }

  /** The unit without what is held back. */
  public static Unit of(Unit unit, Set<ThingId> held) {
    IssuedUnit issued = new IssuedUnit(unit, held);
    issued.holdBackWhatFollows();
    return issued.rest();
  }

  /** No profile and no asset without its machine; no room without its generators and location. */
  private void holdBackWhatFollows() {
    unit.profiles().stream()
        .filter(each -> isHeld(each.machine()))
        .forEach(each -> held.add(each.id()));
    unit.assets().stream()
        .filter(each -> isHeld(each.machine()))
        .forEach(each -> held.add(each.id()));
    unit.rooms().stream()
        .filter(room -> room.assets().stream().anyMatch(this::isHeld) || isHeld(room.location()))
        .forEach(room -> held.add(room.id()));
  }

  private boolean isHeld(Fact<? extends Thing> fact) {
    return held.contains(fact.value().id());
  }

  private <T extends Thing> List<T> shown(List<T> things) {
    return things.stream().filter(thing -> !held.contains(thing.id())).toList();
  }

  private List<Broken> broken() {
    List<Broken> broken = new ArrayList<>(unit.broken());
    List.of(
            unit.machines(),
            unit.profiles(),
            unit.assets(),
            unit.rooms(),
            unit.checklists(),
            unit.drills())
        .forEach(
            things ->
                things.stream()
                    .filter(thing -> held.contains(thing.id()))
                    .forEach(thing -> broken.add(heldBack(thing))));
    return broken;
  }

  private static Broken heldBack(Thing thing) {
    return new Broken(
        thing.id(),
        thing.at(),
        List.of(
            HELD_BACK.at(thing.at(), "not approved as it is written now; see the card in use")));
  }

  private Unit rest() {
    return new Unit(
        unit.details(),
        unit.footSwitches(),
        unit.instruments(),
        unit.cables(),
        unit.electrodes(),
        unit.sites(),
        unit.siteGroups(),
        unit.steps(),
        unit.lesions(),
        shown(unit.machines()),
        unit.citations(),
        shown(unit.profiles()),
        shown(unit.assets()),
        unit.programReadings().stream().filter(each -> !isHeld(each.asset())).toList(),
        unit.serviceEvents().stream().filter(each -> !isHeld(each.asset())).toList(),
        unit.outputChecks().stream().filter(each -> !isHeld(each.asset())).toList(),
        unit.withdrawn().stream().filter(each -> !isHeld(each.asset())).toList(),
        shown(unit.rooms()),
        shown(unit.checklists()),
        shown(unit.drills()),
        unit.paths(),
        unit.handbook(),
        unit.templates(),
        unit.ownWords(),
        broken());
  }
}
