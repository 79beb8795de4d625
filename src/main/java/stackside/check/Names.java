package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stackside.model.Cable;
import stackside.model.Drill;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Profile;
import stackside.model.Role;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Site;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.Unit;
import stackside.source.Location;

/** The names that people must not mix up, one list for each kind of thing. */
final class Names {
  private Names() {}

  /**
   * A name as it is read.
   *
   * @param owner what has it, in words
   */
  record Name(String words, String owner, Location at) {}

  /** All names of a unit; each list holds names that stand side by side somewhere. */
  static List<List<Name>> of(Unit unit) {
    List<List<Name>> all = new ArrayList<>();
    all.add(things(unit.rooms(), Room::name));
    all.add(things(unit.instruments(), Instrument::name));
    all.add(things(unit.cables(), Cable::name));
    all.add(things(unit.electrodes(), Electrode::name));
    all.add(things(unit.footSwitches(), FootSwitch::name));
    all.add(sites(unit));
    all.add(things(unit.lesions(), Lesion::name));
    all.add(things(unit.steps(), Step::name));
    all.add(things(unit.drills(), Drill::name));
    all.add(things(unit.details().roles(), Role::name));
    all.add(things(unit.machines(), Machine::name));
    unit.machines().forEach(machine -> all.add(things(machine.modes(), Mode::name)));
    unit.machines().forEach(machine -> all.add(lamps(machine)));
    unit.machines().forEach(machine -> all.add(programs(unit, machine)));
    return all;
  }

  private static <T extends Thing> List<Name> things(
      List<T> things, Function<T, Fact<String>> name) {
    return things.stream().map(thing -> name(thing, name.apply(thing))).toList();
  }

  private static Name name(Thing thing, Fact<String> name) {
    return new Name(
        name.value(), thing.id().kind().spoken() + " '" + thing.id().local() + "'", name.at());
  }

  /** Sites and their groups may be named in one list; other names of a site count as well. */
  private static List<Name> sites(Unit unit) {
    List<Name> names = new ArrayList<>();
    for (Site site : unit.sites()) {
      names.add(name(site, site.name()));
      site.also().forEach(also -> names.add(name(site, also)));
    }
    unit.siteGroups().forEach(group -> names.add(name(group, group.name())));
    return names;
  }

  private static List<Name> lamps(Machine machine) {
    return machine.lamps().stream()
        .map(it -> new Name(it.name().value(), "lamp '" + it.id() + "'", it.name().at()))
        .toList();
  }

  /** What the display shows, once a slot. */
  private static List<Name> programs(Unit unit, Machine machine) {
    Map<Integer, Name> names = new LinkedHashMap<>();
    for (Profile profile : unit.profilesOn(machine)) {
      profile
          .settings()
          .flatMap(Settings::program)
          .ifPresent(
              it ->
                  names.putIfAbsent(
                      it.slot().value(),
                      new Name(
                          it.shownAs().value(),
                          "program " + it.slot().value() + " of " + Wording.quoted(machine),
                          it.shownAs().at())));
    }
    return List.copyOf(names.values());
  }
}
