package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.derive.coverage.Cover;
import stackside.model.Asset;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Kept;
import stackside.model.Machine;
import stackside.model.Offer;
import stackside.model.PedalColour;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.SiteChoice;
import stackside.model.Term;
import stackside.render.PedalPlan;
import stackside.render.site.Part.Grid;

/** A room: its front panels with everything plugged in, then its answers, then everything else. */
final class RoomPages implements Pages {

  @Override
  public Stream<Page> of(Site site) {
    return site.unit().rooms().stream().map(room -> page(room, site));
  }

  private static Page page(Room room, Site site) {
    Here here = site.at("rooms/" + room.id().slug() + ".html");
    List<Section> sections = new ArrayList<>();
    for (Fact<Asset> asset : room.assets()) {
      sections.add(sockets(room, asset.value(), here));
    }
    sections.add(choose(room, here));
    for (Fact<Asset> asset : room.assets()) {
      sections.add(answers(room, asset.value(), here));
    }
    sections.add(lists(room, here));
    sections.add(here.section("kept", kept(room, here)));
    sections.add(here.section("offers", offers(room, here)));
    sections.add(here.mentions(room.id()));
    return new PlainPage(
        here.frame(room.title(), here.page(here.say("menu.rooms"), "rooms.html"))
            .due(here.review(room.id())),
        "room",
        Optional.of(lead(room, here)),
        sections);
  }

  private static Line lead(Room room, Here here) {
    return here.link(room.location().value())
        .then(Piece.of(". "))
        .then(here.listed(room.patients()))
        .then(Piece.of("."));
  }

  private static Section sockets(Room room, Asset asset, Here here) {
    Machine machine = asset.machine().value();
    String id = "sockets-" + asset.id().slug();
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Say(
            here.link(machine)
                .then(Piece.of(", "))
                .then(here.link(asset))
                .then(Piece.of(". " + here.say("room.other-number")))));
    parts.add(
        SocketParts.panel(here.site().panel(room, asset), "panel-" + asset.id().slug(), here));
    for (FootSwitch footSwitch : here.unit().footSwitchesFor(room, machine)) {
      parts.add(
          SocketParts.pedals(
              PedalPlan.of(footSwitch, here.words()),
              "pedals-" + asset.id().slug() + "-" + footSwitch.id().slug(),
              here));
    }
    return new Section(id, here.say("room.sockets", machine.title(), asset.title()), parts);
  }

  private static Section choose(Room room, Here here) {
    return here.section(
        "choose",
        new Part.Lines(
            List.of(here.page(here.say("room.choose"), "choose/" + room.id().slug() + ".html"))));
  }

  private static Section answers(Room room, Asset asset, Here here) {
    Set<Profile> found = new LinkedHashSet<>();
    List<Cell> open = new ArrayList<>();
    for (Cell cell : here.site().analysis().coverage().of(room, asset)) {
      found.addAll(cell.cover().preferred());
      found.addAll(cell.cover().alternatives());
      if (!(cell.cover() instanceof Cover.Answered)) {
        open.add(cell);
      }
    }
    List<Grid.Row> rows =
        new ArrayList<>(found.stream().map(profile -> row(room, profile, here)).toList());
    rows.addAll(openRows(open, here));
    String heading = here.say("room.answers", asset.machine().value().title(), asset.title());
    return new Section(
        "answers-" + asset.id().slug(),
        heading,
        List.of(
            new Grid(
                heading,
                List.of(
                    here.say("column.for"),
                    here.say("column.sites"),
                    here.say("column.answer"),
                    here.say("column.program"),
                    here.term(Term.SOCKET),
                    here.say("column.instrument"),
                    here.say("fact.pedal-yellow"),
                    here.say("fact.pedal-blue")),
                rows)));
  }

  private static Grid.Row row(Room room, Profile profile, Here here) {
    Line name =
        Line.of(Piece.link(Answers.question(profile), here.to(Answers.page(room, profile))));
    if (profile.alternative().isPresent()) {
      name =
          name.then(
              Piece.of(
                  " "
                      + here.say(
                          "answer.alternative", profile.alternative().get().when().value())));
    }
    for (String caution : Answers.cautions(profile, here)) {
      name = name.then(Piece.of(". "), Piece.strong(caution.replaceFirst("\\.$", "")));
    }
    Line sites = Line.of(Answers.sites(profile));
    Line status = Answers.status(profile, here);
    Line none = Line.of(Piece.quiet(here.say("none")));
    if (profile.settings().isEmpty()) {
      return Grid.Row.of(name, sites, status, none, none, none, none, none);
    }
    Settings settings = profile.settings().get();
    return Grid.Row.of(
        name,
        sites,
        status,
        Line.of(Answers.program(settings, here)),
        Line.of(Piece.shown(settings.socket().value().label().value())),
        here.link(settings.instrument().value()),
        Answers.pedal(settings, PedalColour.YELLOW, here),
        Answers.pedal(settings, PedalColour.BLUE, here));
  }

  /** Questions without a single answer; those with the same lesion and step share a row. */
  private static List<Grid.Row> openRows(List<Cell> open, Here here) {
    Map<String, List<Cell>> grouped = new LinkedHashMap<>();
    for (Cell cell : open) {
      String key = cell.lesion().id() + " " + cell.step().id() + " " + cell.cover().getClass();
      grouped.computeIfAbsent(key, any -> new ArrayList<>()).add(cell);
    }
    return grouped.values().stream().map(cells -> openRow(cells, here)).toList();
  }

  private static Grid.Row openRow(List<Cell> cells, Here here) {
    Cell first = cells.get(0);
    Set<String> sites = new LinkedHashSet<>();
    cells.forEach(cell -> sites.add(cell.site().title()));
    Line none = Line.of(Piece.quiet(here.say("none")));
    return Grid.Row.of(
        here.link(first.lesion()).then(Piece.of(": ")).then(here.link(first.step())),
        Line.of(String.join(", ", sites)),
        Covers.status(first.cover(), here),
        none,
        none,
        none,
        none,
        none);
  }

  private static Section lists(Room room, Here here) {
    List<Line> lines = new ArrayList<>();
    Set<Checklist> checklists = new LinkedHashSet<>();
    Set<Drill> drills = new LinkedHashSet<>();
    for (Machine machine : here.unit().machinesIn(room)) {
      checklists.addAll(here.unit().checklistsFor(machine));
      drills.addAll(here.unit().drillsFor(machine));
    }
    checklists.forEach(list -> lines.add(here.linkWithKind(list.id())));
    drills.forEach(drill -> lines.add(here.linkWithKind(drill.id())));
    room.assets()
        .forEach(
            asset ->
                lines.add(
                    here.page(
                        here.say("room.failure-signs", asset.value().title()),
                        FailureSignPages.page(room, asset.value()))));
    return here.section("when", new Part.Lines(lines));
  }

  private static Part.Facts kept(Room room, Here here) {
    Kept kept = room.keeps();
    List<Part.Facts.Fact> facts = new ArrayList<>();
    facts.add(new Part.Facts.Fact(here.say("fact.instruments"), here.links(kept.instruments())));
    facts.add(new Part.Facts.Fact(here.say("fact.cables"), here.links(kept.cables())));
    facts.add(
        new Part.Facts.Fact(
            here.term(Term.NEUTRAL_ELECTRODE), here.links(kept.neutralElectrodes())));
    facts.add(new Part.Facts.Fact(here.term(Term.FOOT_SWITCH), here.links(room.footSwitches())));
    List<Line> spares = new ArrayList<>(here.links(kept.spares()));
    kept.sparesWhere().ifPresent(where -> spares.add(Line.of(where.value())));
    facts.add(new Part.Facts.Fact(here.say("fact.spares"), spares));
    return new Part.Facts(facts.stream().filter(fact -> !fact.values().isEmpty()).toList());
  }

  private static Part offers(Room room, Here here) {
    List<Grid.Row> rows = new ArrayList<>();
    for (Offer offer : room.offers()) {
      rows.add(
          Grid.Row.of(
              here.listed(offer.lesions()),
              Line.joined(
                  offer.sites().stream().map(fact -> choice(fact.value(), here)).toList(), ", ")));
    }
    return new Grid(
        here.say("section.offers"),
        List.of(here.say("column.lesions"), here.say("column.sites")),
        rows);
  }

  private static Line choice(SiteChoice choice, Here here) {
    return here.link(choice);
  }
}
