package stackside.check;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stackside.model.Fact;
import stackside.model.Profile;
import stackside.model.Prose;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/** What the content of a unit makes use of. */
final class Uses {
  private final Set<ThingId> used = new TreeSet<>();

  private Uses() {}

  /** The ids of everything that something else names. */
  static Set<ThingId> of(Unit unit) {
    Uses uses = new Uses();
    unit.profiles().forEach(uses::profile);
    unit.rooms().forEach(uses::room);
    unit.assets().forEach(asset -> uses.add(asset.machine()));
    unit.machines().forEach(machine -> uses.addAll(machine.footSwitches()));
    unit.lesions().forEach(lesion -> uses.addAll(lesion.steps()));
    unit.siteGroups().forEach(group -> uses.addAll(group.of()));
    unit.details().signatures().values().forEach(uses::addAll);
    unit.details().lifts().ifPresent(uses::add);
    unit.drills().stream()
        .flatMap(drill -> drill.checks().stream())
        .forEach(check -> uses.addAll(check.needs()));
    unit.handbook().forEach(page -> page.texts().forEach(uses::prose));
    unit.paths().stream()
        .flatMap(path -> path.reads().stream())
        .forEach(fact -> uses.used.add(fact.value()));
    return uses.used;
  }

  private void profile(Profile profile) {
    add(profile.machine());
    addAll(profile.lesions());
    addAll(profile.sites());
    add(profile.step());
    addAll(profile.patients());
    addAll(profile.evidence());
    profile.ask().ifPresent(this::add);
    profile.settings().ifPresent(this::settings);
    profile.technique().ifPresent(this::prose);
    profile.caution().ifPresent(this::prose);
  }

  private void settings(Settings settings) {
    add(settings.instrument());
    settings.neutralElectrode().ifPresent(this::add);
  }

  private void room(Room room) {
    add(room.location());
    addAll(room.footSwitches());
    addAll(room.patients());
    addAll(room.keeps().instruments());
    addAll(room.keeps().cables());
    addAll(room.keeps().neutralElectrodes());
    addAll(room.keeps().spares());
    room.offers()
        .forEach(
            offer -> {
              addAll(offer.lesions());
              addAll(offer.sites());
            });
  }

  private void prose(Prose prose) {
    prose.links().forEach(link -> used.add(link.target()));
  }

  private void add(Fact<? extends Thing> fact) {
    used.add(fact.value().id());
  }

  private void addAll(List<? extends Fact<? extends Thing>> facts) {
    facts.forEach(this::add);
  }
}
