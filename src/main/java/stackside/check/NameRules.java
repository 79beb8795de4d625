package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
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
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/** Names that people mix up, and things that nothing names. */
final class NameRules {

  private NameRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error("name-twice", "two things of one kind have the same name", NameRules::nameTwice),
        warning(
            "look-alike-names",
            "two names differ only in characters that look alike",
            NameRules::lookAlikeNames),
        warning("never-used", "something is described, but nothing uses it", NameRules::neverUsed));
  }

  private static List<Finding> nameTwice(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (List<Name> names : names(checked.unit())) {
      for (int i = 1; i < names.size(); i++) {
        Name name = names.get(i);
        names.subList(0, i).stream()
            .filter(earlier -> earlier.words().equals(name.words()))
            .filter(earlier -> !earlier.owner().equals(name.owner()))
            .findFirst()
            .ifPresent(earlier -> found.add(nameTwice(name, earlier)));
      }
    }
    return found;
  }

  private static Finding nameTwice(Name name, Name earlier) {
    return Finding.at(
            name.at(),
            "the name '%s' is taken: %s has it too".formatted(name.words(), earlier.owner()))
        .note(earlier.at(), "the other one")
        .help("give each the name that people read on it");
  }

  private static List<Finding> lookAlikeNames(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (List<Name> names : names(checked.unit())) {
      Map<String, List<Name>> alike = new HashMap<>();
      for (Name name : names) {
        List<Name> earlier = alike.computeIfAbsent(asSeen(name.words()), any -> new ArrayList<>());
        earlier.stream()
            .filter(each -> !each.words().equals(name.words()))
            .filter(each -> !each.owner().equals(name.owner()))
            .findFirst()
            .ifPresent(each -> found.add(lookAlikeNames(name, each)));
        earlier.add(name);
      }
    }
    return found;
  }

  /** Capitals, blanks, hyphens, and letters that pass for digits are not told apart at a glance. */
  private static String asSeen(String words) {
    return words
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]", "")
        .replace('o', '0')
        .replace('l', '1')
        .replace('i', '1')
        .replace('s', '5')
        .replace('z', '2')
        .replace('b', '8');
  }

  private static Finding lookAlikeNames(Name name, Name earlier) {
    return Finding.at(
            name.at(),
            "'%s' is easily mistaken for '%s', the name of %s"
                .formatted(name.words(), earlier.words(), earlier.owner()))
        .note(earlier.at(), "the other one")
        .help("make the names differ by a whole word");
  }

  private static List<Finding> neverUsed(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (!unit.broken().isEmpty()) {
      return List.of();
    }
    Set<ThingId> used = Uses.of(unit);
    return Stream.of(
            unit.instruments(),
            unit.cables(),
            unit.electrodes(),
            unit.footSwitches(),
            unit.sites(),
            unit.siteGroups(),
            unit.steps(),
            unit.lesions(),
            unit.details().patients(),
            unit.details().roles(),
            unit.details().locations(),
            unit.citations(),
            unit.machines())
        .flatMap(List::stream)
        .filter(thing -> !used.contains(thing.id()))
        .map(NameRules::neverUsed)
        .toList();
  }

  private static Finding neverUsed(Thing thing) {
    return Finding.at(
            thing.at(),
            "%s '%s' is described here, but nothing uses it"
                .formatted(thing.id().kind().spoken(), thing.id().slug()))
        .help("remove it, or name it where it belongs");
  }

  /**
   * A name as it is read.
   *
   * @param owner what has it, in words
   */
  private record Name(String words, String owner, Location at) {}

  /** All names of a unit; each list holds names that stand side by side somewhere. */
  private static List<List<Name>> names(Unit unit) {
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

  /** Sites and their groups may stand in one list. The other names of a site count as well. */
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

  /** What the display shows, once for each slot. */
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
