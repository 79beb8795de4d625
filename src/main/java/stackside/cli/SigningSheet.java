package stackside.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.edition.Editions;
import stackside.derive.signed.Decisions;
import stackside.derive.signed.FactChange;
import stackside.derive.signed.FactWords;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.SignedFacts;
import stackside.derive.signed.Subjects;
import stackside.derive.standing.GoneStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.model.Asset;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Role;
import stackside.model.Room;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.CardThings;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * What one role is asked to sign, to be read before anything is asked: group by group, by machine
 * and room, each thing with what it says, what changed, what the program warns of, and the cards
 * that show it. Its number stands for all of that.
 */
final class SigningSheet {
  private static final String WHOLE_UNIT = "The whole unit";

  private final Unit unit;
  private final Decisions decisions;
  private final Role role;
  private final Map<ThingId, List<String>> warnings = new LinkedHashMap<>();
  private final Map<ThingId, List<String>> cards = new LinkedHashMap<>();
  private final List<Group> groups = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();

  /** Things that are signed with one answer. */
  record Group(String title, List<Item> items) {
    Group {
      items = List.copyOf(items);
    }
  }

  /**
   * One thing to decide about.
   *
   * @param facts absent where it is to be gone
   */
  record Item(ThingId thing, Optional<SignedFacts> facts) {}

  private SigningSheet(
      Unit unit, Decisions decisions, Role role, CheckedContent judged, Collection<Item> items) {
    this.unit = unit;
    this.decisions = decisions;
    this.role = role;
    collectWarnings(judged);
    collectCards(judged);
    Map<String, List<Item>> byGroup = new LinkedHashMap<>();
    items.forEach(item -> byGroup.computeIfAbsent(group(item), any -> new ArrayList<>()).add(item));
    byGroup.forEach((title, members) -> groups.add(new Group(title, members)));
    write();
  }

  /** The sheet for a role; it may be empty. */
  static SigningSheet of(
      CheckedContent judged, Decisions decisions, Role role, Collection<Item> items) {
    return new SigningSheet(judged.analysis().orElseThrow().unit(), decisions, role, judged, items);
  }

  /**
   * Whether a thing can be signed as it is read: nothing is signed that rests on anything
   * unreadable. Which cables a profile is used with follows from all rooms.
   */
  static boolean isReadable(CheckedContent judged, ThingId thing) {
    Unit unit = judged.analysis().orElseThrow().unit();
    if (thing.equals(unit.sources().id())) {
      return judged
          .errors()
          .filter(ErrorScope::isUnread)
          .noneMatch(each -> each.at().file().equals("sources.yaml"));
    }
    return thing.kind() != Kind.PROFILE || !unit.anyBroken(Kind.ROOM);
  }

  /** What a role has still to decide about, or to look at again. */
  static List<Item> open(CheckedContent judged, Role role, Set<ThingId> named) {
    Unit unit = judged.analysis().orElseThrow().unit();
    Stream<Item> there =
        judged.standing().orElseThrow().signatures().stream()
            .filter(signed -> isDue(signed, role, judged, named))
            .flatMap(signed -> SignedFacts.of(unit, signed.thing()).stream())
            .map(facts -> new Item(facts.thing(), Optional.of(facts)));
    Stream<Item> gone =
        judged.standing().orElseThrow().gone().stream()
            .filter(each -> each.missing().stream().anyMatch(role::equals))
            .map(GoneStanding::thing)
            .map(thing -> new Item(thing, Optional.empty()));
    return Stream.concat(there, gone)
        .filter(item -> named.isEmpty() || named.contains(item.thing()))
        .toList();
  }

  /** Not signed as it is, due within a month, or asked for by name. */
  private static boolean isDue(
      SignatureStanding signed, Role role, CheckedContent judged, Set<ThingId> named) {
    Optional<SignatureStanding.Wanted> own =
        signed.wanted().stream().filter(each -> each.role().id().equals(role.id())).findFirst();
    if (own.isEmpty()) {
      return false;
    }
    boolean due =
        signed
            .reviewBy()
            .filter(day -> !judged.standing().orElseThrow().on().plusMonths(1).isBefore(day))
            .isPresent();
    return own.get().given().isEmpty() || due || named.contains(signed.thing().id());
  }

  private void collectWarnings(CheckedContent judged) {
    Subjects subjects = Subjects.of(unit);
    for (Problem problem : judged.problems()) {
      if (problem.severity() == Severity.WARNING) {
        ThingId about = subjects.at(problem.at()).orElse(unit.policies().id());
        warnings
            .computeIfAbsent(about, any -> new ArrayList<>())
            .add(problem.at() + ": " + problem.message() + mustBeAnswered(problem));
      }
    }
  }

  private static String mustBeAnswered(Problem problem) {
    return Unanswered.mayHurt(problem)
        ? "; nothing that rests on it is issued until the content answers it"
        : "";
  }

  private void collectCards(CheckedContent judged) {
    Publication trial =
        new Publication(
            judged.analysis().orElseThrow(),
            List.of(),
            List.of(),
            Marking.DRAFT,
            Editions.none(),
            judged.approvals(),
            judged.standing().orElseThrow().on());
    for (CardPlan plan : CardPlanner.plans(trial)) {
      String title = plan.room().title() + ", " + plan.asset().title() + ": " + plan.title();
      CardThings.of(unit, plan)
          .forEach(thing -> cards.computeIfAbsent(thing, any -> new ArrayList<>()).add(title));
    }
  }

  /** The machine or the room that a thing belongs to. */
  private String group(Item item) {
    Optional<Thing> thing = unit.find(item.thing());
    if (thing.isEmpty()) {
      return "Gone from the content";
    }
    Thing there = thing.get();
    if (there instanceof Room room) {
      return room.title();
    }
    return machine(there).map(Thing::title).orElse(WHOLE_UNIT);
  }

  private static Optional<Machine> machine(Thing thing) {
    if (thing instanceof Machine machine) {
      return Optional.of(machine);
    }
    if (thing instanceof Profile profile) {
      return Optional.of(profile.machine().value());
    }
    if (thing instanceof Asset asset) {
      return Optional.of(asset.machine().value());
    }
    if (thing instanceof Drill drill) {
      return only(drill.appliesTo().machines());
    }
    return thing instanceof Checklist list ? only(list.appliesTo().machines()) : Optional.empty();
  }

  private static Optional<Machine> only(List<Fact<Machine>> machines) {
    return machines.size() == 1 ? Optional.of(machines.get(0).value()) : Optional.empty();
  }

  List<Group> groups() {
    return List.copyOf(groups);
  }

  int size() {
    return groups.stream().mapToInt(group -> group.items().size()).sum();
  }

  /** What is kept of it, so that nobody can say later that something else was read. */
  Json.Members json() {
    return Json.members(
        Map.of(
            "role",
            Json.text(role.id().slug()),
            "sheet",
            Json.items(lines.stream().map(Json::text).toList())));
  }

  Fingerprint fingerprint() {
    return Fingerprint.of(json());
  }

  /** What a person types to show that it was read. */
  String number() {
    return fingerprint().number();
  }

  List<String> lines() {
    return List.copyOf(lines);
  }

  private void write() {
    int number = 0;
    for (Group group : groups) {
      number++;
      lines.add("");
      lines.add(title(number, group));
      group.items().forEach(this::write);
      List<String> shown =
          group.items().stream()
              .flatMap(item -> cards.getOrDefault(item.thing(), List.of()).stream())
              .distinct()
              .toList();
      lines.add("  cards that show it: " + (shown.isEmpty() ? "none" : String.join("; ", shown)));
    }
  }

  String title(int number, Group group) {
    int count = group.items().size();
    return "Group %d of %d: %s, %s"
        .formatted(
            number, groups.size(), group.title(), count == 1 ? "1 thing" : count + " things");
  }

  private void write(Item item) {
    lines.add("");
    lines.add(
        "  "
            + item.thing()
            + unit.find(item.thing()).map(thing -> ": " + thing.title()).orElse("")
            + item.facts().map(facts -> ", " + facts.fingerprint().number()).orElse(""));
    Optional<Ledger.Decision> last = decisions.about(item.thing());
    lines.add(
        last.map(
                decision ->
                    "    last signed by "
                        + decision.role()
                        + " ("
                        + decision.initials()
                        + ") on "
                        + decision.day())
            .orElse("    never signed before"));
    if (item.facts().isEmpty()) {
      lines.add("    to be signed: that it is gone");
      return;
    }
    SignedFacts facts = item.facts().get();
    Optional<List<String>> changes =
        decisions
            .sinceSigned(facts)
            .map(since -> since.changes().stream().map(FactChange::words).toList());
    changes.ifPresent(words -> add("changed: ", words));
    changes
        .filter(List::isEmpty)
        .ifPresent(none -> lines.add("    unchanged since; to be signed: that it still holds"));
    add("warning: ", warnings.getOrDefault(item.thing(), List.of()));
    add("", FactWords.lines(facts.facts()));
  }

  private void add(String before, List<String> more) {
    more.forEach(line -> lines.add("    " + before + Printable.of(line).text()));
  }

  /** All warnings that are about nothing on the sheet. */
  List<String> otherWarnings() {
    Set<ThingId> here =
        groups.stream()
            .flatMap(group -> group.items().stream())
            .map(Item::thing)
            .collect(Collectors.toSet());
    return warnings.entrySet().stream()
        .filter(each -> !here.contains(each.getKey()))
        .flatMap(each -> each.getValue().stream())
        .toList();
  }
}
