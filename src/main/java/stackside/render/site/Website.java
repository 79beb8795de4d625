package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import stackside.derive.Analysis;
import stackside.derive.standing.Standing;
import stackside.model.Asset;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.PanelPlan;
import stackside.render.PanelPlans;
import stackside.render.Publication;
import stackside.render.Words;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardThings;
import stackside.render.plan.Face;

/**
 * Shared by the makers of all pages: the publication, the cards, the words, who mentions whom, and
 * answers to questions that nearly every page asks.
 */
final class Website {
  private final Publication publication;
  private final List<CardPlan> cards;
  private final Mentions mentions;
  private final Standing standing;
  private final Map<ThingId, List<Profile>> serving = new LinkedHashMap<>();
  private final Map<ThingId, List<Room>> served = new TreeMap<>();
  private final Map<String, Set<ThingId>> thingsOnCards = new TreeMap<>();

  /** Keyed by model, or by room and asset. Concurrent, because pages are made in parallel. */
  private final Map<List<ThingId>, PanelPlan> panels = new ConcurrentHashMap<>();

  Website(Publication publication, List<CardPlan> cards) {
    this.publication = publication;
    this.cards = List.copyOf(cards);
    this.mentions = Mentions.of(publication.unit());
    this.standing = Standing.of(unit(), publication.approvals(), publication.on());
    unit().rooms().forEach(this::serve);
    cards.forEach(plan -> thingsOnCards.put(plan.path(), CardThings.of(unit(), plan)));
  }

  private void serve(Room room) {
    List<Profile> answers = unit().profilesServing(room);
    serving.put(room.id(), answers);
    answers.forEach(
        answer -> served.computeIfAbsent(answer.id(), any -> new ArrayList<>()).add(room));
  }

  Publication publication() {
    return publication;
  }

  List<CardPlan> cards() {
    return cards;
  }

  /** The cards of a room that show an answer. */
  List<CardPlan> cardsWith(Room room, Profile profile) {
    return cards.stream()
        .filter(plan -> plan.room().id().equals(room.id()))
        .filter(plan -> plan.face() == Face.SETTINGS)
        .filter(plan -> thingsOnCards.getOrDefault(plan.path(), Set.of()).contains(profile.id()))
        .toList();
  }

  Words words() {
    return publication.words();
  }

  Mentions mentions() {
    return mentions;
  }

  Standing standing() {
    return standing;
  }

  Unit unit() {
    return publication.unit();
  }

  Analysis analysis() {
    return publication.analysis();
  }

  /** The context of a page at this path. */
  PageContext at(String path) {
    return new PageContext(this, path);
  }

  /** The front panel of a model, all rooms combined. */
  PanelPlan panel(Machine machine) {
    return panels.computeIfAbsent(
        List.of(machine.id()), any -> PanelPlans.of(publication, machine));
  }

  /** The front panel of a generator in a room, all its answers combined. */
  PanelPlan panel(Room room, Asset asset) {
    return panels.computeIfAbsent(
        List.of(room.id(), asset.id()), any -> PanelPlans.in(publication, room, asset));
  }

  /** The answers that serve a room. */
  List<Profile> serving(Room room) {
    return serving.getOrDefault(room.id(), List.of());
  }

  /** The rooms that an answer serves. */
  List<Room> served(Profile profile) {
    return served.getOrDefault(profile.id(), List.of());
  }
}
