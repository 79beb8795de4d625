package stackside.render.plan;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stackside.model.ChecklistKind;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * The things that a card depends on. A problem with one of them stops this card from being issued;
 * a problem with anything else does not.
 */
public final class CardThings {
  private final Unit unit;
  private final CardPlan plan;
  private final Set<ThingId> things = new TreeSet<>();

  private CardThings(Unit unit, CardPlan plan) {
    this.unit = unit;
    this.plan = plan;
  }

  public static Set<ThingId> of(Unit unit, CardPlan plan) {
    CardThings card = new CardThings(unit, plan);
    card.addWhoAnswersForIt();
    card.addWhereItHangs();
    switch (plan.face()) {
      case SETTINGS -> card.addAnswers();
      case SET_UP -> card.addInstructions();
    }
    return card.things;
  }

  /** Every approval on the card depends on who signs and how long a signature lasts. */
  private void addWhoAnswersForIt() {
    add(Stream.of(unit.policies()));
    add(unit.details().roles().stream());
  }

  private Machine machine() {
    return plan.asset().machine().value();
  }

  private void addWhereItHangs() {
    Room room = plan.room();
    add(Stream.of(room, room.location().value(), plan.asset(), machine()));
    add(unit.footSwitchesFor(room, machine()).stream());
  }

  private void addInstructions() {
    add(
        unit.checklistsFor(machine()).stream()
            .filter(list -> list.kind().value() == ChecklistKind.SET_UP));
    add(unit.drillsFor(machine()).stream());
  }

  private void addAnswers() {
    Room room = plan.room();
    unit.profilesServing(room).stream()
        .filter(profile -> profile.machine().value().id().equals(machine().id()))
        .filter(this::isOnThisPart)
        .forEach(this::addAnswer);
    add(room.keeps().cables().stream().map(Fact::value));
    add(room.patients().stream().map(Fact::value));
    room.offers()
        .forEach(
            offer -> {
              add(offer.lesions().stream().map(Fact::value).filter(this::isOnThisPart));
              add(offer.allSites().stream().filter(this::isOnThisPart));
            });
  }

  private void addAnswer(Profile profile) {
    add(Stream.of(profile, profile.step().value()));
    profile
        .settings()
        .ifPresent(
            settings -> {
              add(Stream.of(settings.instrument().value()));
              add(settings.neutralElectrode().stream().map(Fact::value));
            });
  }

  private boolean isOnThisPart(Profile profile) {
    return profile.lesions().stream()
        .map(Fact::value)
        .anyMatch(
            lesion -> profile.allSites().stream().anyMatch(site -> isOnThisPart(lesion, site)));
  }

  private boolean isOnThisPart(Lesion lesion) {
    return sites().anyMatch(site -> isOnThisPart(lesion, site));
  }

  private boolean isOnThisPart(Site site) {
    return plan.room().offers().stream()
        .flatMap(offer -> offer.lesions().stream())
        .anyMatch(lesion -> isOnThisPart(lesion.value(), site));
  }

  private Stream<Site> sites() {
    return plan.room().offers().stream().flatMap(offer -> offer.allSites().stream());
  }

  private boolean isOnThisPart(Lesion lesion, Site site) {
    return plan.part().map(part -> part.holds(lesion, site)).orElse(true);
  }

  private void add(Stream<? extends Thing> more) {
    more.forEach(thing -> things.add(thing.id()));
  }
}
