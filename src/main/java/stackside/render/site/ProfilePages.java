package stackside.render.site;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.circuit.FaultOutcome;
import stackside.derive.edition.Editions;
import stackside.model.FootSwitch;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.render.OutcomeWords;
import stackside.render.PanelPlans;
import stackside.render.PedalPlan;
import stackside.render.Publication;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/**
 * An approved answer, on its own page and on a page for each room that it serves. The page for a
 * room shows that room's cables on the front panel, and what a wrong socket would do there.
 */
final class ProfilePages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return site.unit().profiles().stream()
        .flatMap(
            profile ->
                Stream.concat(
                    Stream.of(page(profile, site)),
                    site.served(profile).stream().map(room -> inRoom(room, profile, site))));
  }

  private static Page page(Profile profile, Website site) {
    PageContext here = site.at("profiles/" + profile.id().slug() + ".html");
    List<Section> sections = new ArrayList<>();
    sections.add(answer(profile, Answers.facts(profile, here), here));
    sections.add(here.section("for", question(profile, here)));
    sections.addAll(remarks(profile, here));
    List<RichLine> rooms =
        site.served(profile).stream()
            .map(
                room ->
                    here.page(
                        here.say("profile.in-room", room.title()), Answers.page(room, profile)))
            .toList();
    sections.add(
        here.section(
            "in-rooms",
            rooms.isEmpty()
                ? new Part.Say(RichLine.of(here.say("profile.no-room")))
                : new Part.Lines(rooms)));
    sections.add(here.mentions(profile.id()));
    return new PlainPage(
        here.frame(
                Answers.question(profile),
                here.page(here.say("menu.machines"), "machines.html"),
                here.link(profile.machine().value()))
            .about(about(profile, profile.machine().value().title()))
            .due(here.review(profile.id())),
        "answer",
        Optional.of(RichLine.of(Answers.sites(profile))),
        sections);
  }

  /** When to use it and what to watch for come before everything that is set, as on the card. */
  private static Section answer(Profile profile, Facts facts, PageContext here) {
    List<Part> parts = new ArrayList<>();
    profile
        .alternative()
        .ifPresent(each -> parts.add(new Part.Say(Answers.alternative(each, here))));
    Answers.pressOnly(profile, here)
        .ifPresent(words -> parts.add(new Part.Box("", List.of(RichLine.of(words)))));
    profile
        .caution()
        .ifPresent(
            prose -> parts.add(new Part.Caution(here.say("answer.caution"), here.prose(prose))));
    parts.add(facts);
    return here.section("answer", parts.toArray(Part[]::new));
  }

  private static Facts question(Profile profile, PageContext here) {
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(Answers.fact(here, "machine", here.link(profile.machine().value())));
    facts.add(new Facts.Fact(here.say("fact.lesions"), here.links(profile.lesions())));
    facts.add(
        new Facts.Fact(
            here.say("fact.sites"),
            profile.sites().stream().map(site -> here.link(site.value())).toList()));
    facts.add(Answers.fact(here, "step", here.link(profile.step().value())));
    facts.add(
        new Facts.Fact(
            here.say("fact.patients"),
            here.unit().patientsOf(profile).stream().map(here::link).toList()));
    return new Facts(facts);
  }

  private static List<Section> remarks(Profile profile, PageContext here) {
    List<Section> sections = new ArrayList<>();
    profile
        .technique()
        .ifPresent(
            prose -> sections.add(here.section("technique", new Part.Text(here.prose(prose)))));
    if (!profile.evidence().isEmpty()) {
      sections.add(here.section("evidence", new Part.Lines(here.links(profile.evidence()))));
    }
    if (!profile.because().isEmpty()) {
      sections.add(here.section("because", because(profile)));
    }
    return sections;
  }

  private static Facts because(Profile profile) {
    return new Facts(
        profile.because().entrySet().stream()
            .map(
                entry ->
                    new Facts.Fact(
                        entry.getKey().replace('-', ' '),
                        List.of(RichLine.of(entry.getValue().value()))))
            .toList());
  }

  private static Page inRoom(Room room, Profile profile, Website site) {
    PageContext here = site.at(Answers.page(room, profile));
    Machine machine = profile.machine().value();
    List<Section> sections = new ArrayList<>();
    List<Facts.Fact> facts = new ArrayList<>(Answers.facts(profile, here).facts());
    onCards(room, profile, here).ifPresent(facts::add);
    sections.add(answer(profile, new Facts(facts), here));
    if (profile.settings().isPresent()) {
      sections.add(drawings(room, profile, here));
    }
    sections.addAll(remarks(profile, here));
    List<Profile> others = others(room, profile, here);
    if (!others.isEmpty()) {
      sections.add(
          here.section(
              "others",
              new Part.Lines(others.stream().map(other -> other(room, other, here)).toList())));
    }
    wrongSockets(room, profile, here).ifPresent(sections::add);
    sections.add(here.section("when", when(room, machine, here)));
    sections.add(
        here.section(
            "everything",
            new Part.Lines(
                List.of(here.link(profile, here.say("profile.whole")), here.link(machine)))));
    return new PlainPage(
        here.frame(
                Answers.question(profile),
                here.page(here.say("menu.choose"), "choose.html"),
                here.link(room))
            .about(about(profile, room.title() + ", " + machine.title()))
            .due(here.review(profile.id())),
        "answer",
        Optional.of(RichLine.of(room.title() + ", " + machine.title() + ". " + Answers.sites(profile))),
        sections);
  }

  /** The room's cards that show the answer, with their editions. */
  private static Optional<Facts.Fact> onCards(Room room, Profile profile, PageContext here) {
    Publication publication = here.site().publication();
    String key = publication.draft() ? "answer.card-draft" : "answer.card";
    RichLine[] cards =
        here.site().cardsWith(room, profile).stream()
            .map(
                plan -> {
                  Editions.Edition edition =
                      publication.editions().of(plan.name(), publication.on());
                  return here.page(
                      here.say(key, plan.title(), edition.words(), here.date(edition.since())),
                      CardPages.path(plan));
                })
            .toArray(RichLine[]::new);
    return cards.length == 0 ? Optional.empty() : Optional.of(Answers.fact(here, "on-card", cards));
  }

  private static String about(Profile profile, String where) {
    String patients =
        profile.patients().stream().map(group -> ", " + group.value().title()).collect(joining());
    return Answers.sites(profile)
        + patients
        + profile.alternative().map(other -> ", " + other.name().value()).orElse("")
        + ", "
        + where;
  }

  private static Section drawings(Room room, Profile profile, PageContext here) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        SocketParts.panel(PanelPlans.in(here.site().publication(), room, profile), "panel", here));
    for (FootSwitch footSwitch : here.unit().footSwitchesFor(room, profile.machine().value())) {
      parts.add(
          SocketParts.pedals(
              PedalPlan.of(footSwitch, profile.settings().orElseThrow(), here.words()),
              "pedals-" + footSwitch.id().slug(),
              here));
    }
    return here.section("sockets-and-pedals", parts.toArray(Part[]::new));
  }

  /**
   * The other answers for the same lesion, step and site: the preferred one and its alternatives.
   */
  private static List<Profile> others(Room room, Profile profile, PageContext here) {
    Set<Profile> others = new LinkedHashSet<>();
    here.site().analysis().coverage().of(room).stream()
        .filter(
            cell ->
                cell.cover().preferred().contains(profile)
                    || cell.cover().alternatives().contains(profile))
        .forEach(
            cell -> {
              others.addAll(cell.cover().preferred());
              others.addAll(cell.cover().alternatives());
            });
    others.remove(profile);
    return List.copyOf(others);
  }

  private static RichLine other(Room room, Profile other, PageContext here) {
    String words =
        other
            .alternative()
            .map(
                alternative ->
                    alternative.name().value()
                        + ". "
                        + here.say("answer.alternative", alternative.when().value()))
            .orElse(here.say("answer.preferred"));
    return RichLine.of(TextPiece.link(words, here.to(Answers.page(room, other))))
        .then(TextPiece.of(" "))
        .then(Answers.brief(other, here));
  }

  private static Optional<Section> wrongSockets(Room room, Profile profile, PageContext here) {
    List<FaultOutcome> wrong = here.site().analysis().circuits().wrongSockets(profile, room);
    if (wrong.isEmpty()) {
      return Optional.empty();
    }
    List<Grid.GridRow> rows = wrong.stream().map(outcome -> row(outcome, here)).toList();
    return Optional.of(
        here.section(
            "wrong-sockets",
            new Part.Say(RichLine.of(here.say("wrong-sockets.computed"))),
            new Grid(
                here.say("section.wrong-sockets"),
                List.of(
                    here.say("column.socket"),
                    here.say("column.happens"),
                    here.say("column.class")),
                rows)));
  }

  private static Grid.GridRow row(FaultOutcome outcome, PageContext here) {
    return Grid.GridRow.of(
        outcome.deviation().socket().map(here::link).orElse(RichLine.of(here.say("unknown"))),
        RichLine.of(OutcomeWords.brief(outcome.worst(), here.words())),
        PageContext.status(
            OutcomeWords.mark(outcome.outcomeClass()),
            OutcomeWords.words(outcome.outcomeClass(), here.words())));
  }

  private static Part when(Room room, Machine machine, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    here.unit().checklistsFor(machine).forEach(list -> lines.add(here.linkWithKind(list.id())));
    here.unit().drillsFor(machine).forEach(drill -> lines.add(here.linkWithKind(drill.id())));
    room.assets().stream()
        .filter(asset -> asset.value().machine().value().id().equals(machine.id()))
        .forEach(
            asset ->
                lines.add(
                    here.page(
                        here.say("room.failure-signs", asset.value().title()),
                        FailureSignPages.page(room, asset.value()))));
    return new Part.Lines(lines);
  }
}
