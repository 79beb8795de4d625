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
import stackside.model.RoomStock;
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
  public Stream<Page> of(Website site) {
    return site.unit().rooms().stream().map(room -> page(room, site));
  }

  private static Page page(Room room, Website site) {
    PageContext here = site.at("rooms/" + room.id().slug() + ".html");
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

  private static RichLine lead(Room room, PageContext here) {
    return here.link(room.location().value())
        .then(TextPiece.of(". "))
        .then(here.listed(room.patients()))
        .then(TextPiece.of("."));
  }

  private static Section sockets(Room room, Asset asset, PageContext here) {
    Machine machine = asset.machine().value();
    String id = "sockets-" + asset.id().slug();
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Say(
            here.link(machine)
                .then(TextPiece.of(", "))
                .then(here.link(asset))
                .then(TextPiece.of(". " + here.say("room.other-number")))));
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

  private static Section choose(Room room, PageContext here) {
    return here.section(
        "choose",
        new Part.Lines(
            List.of(here.page(here.say("room.choose"), "choose/" + room.id().slug() + ".html"))));
  }

  private static Section answers(Room room, Asset asset, PageContext here) {
    Set<Profile> found = new LinkedHashSet<>();
    List<Cell> open = new ArrayList<>();
    for (Cell cell : here.site().analysis().coverage().of(room, asset)) {
      found.addAll(cell.cover().preferred());
      found.addAll(cell.cover().alternatives());
      if (!(cell.cover() instanceof Cover.Answered)) {
        open.add(cell);
      }
    }
    List<Grid.GridRow> rows =
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

  private static Grid.GridRow row(Room room, Profile profile, PageContext here) {
    RichLine name =
        RichLine.of(TextPiece.link(Answers.question(profile), here.to(Answers.page(room, profile))));
    if (profile.alternative().isPresent()) {
      name =
          name.then(
              TextPiece.of(
                  " "
                      + here.say(
                          "answer.alternative", profile.alternative().get().when().value())));
    }
    for (String caution : Answers.cautions(profile, here)) {
      name = name.then(TextPiece.of(". "), TextPiece.strong(caution.replaceFirst("\\.$", "")));
    }
    RichLine sites = RichLine.of(Answers.sites(profile));
    RichLine status = Answers.status(profile, here);
    RichLine none = RichLine.of(TextPiece.quiet(here.say("none")));
    if (profile.settings().isEmpty()) {
      return Grid.GridRow.of(name, sites, status, none, none, none, none, none);
    }
    Settings settings = profile.settings().get();
    return Grid.GridRow.of(
        name,
        sites,
        status,
        RichLine.of(Answers.program(settings, here)),
        RichLine.of(TextPiece.shown(settings.socket().value().label().value())),
        here.link(settings.instrument().value()),
        Answers.pedal(settings, PedalColour.YELLOW, here),
        Answers.pedal(settings, PedalColour.BLUE, here));
  }

  /** Questions without a single answer; those with the same lesion and step share a row. */
  private static List<Grid.GridRow> openRows(List<Cell> open, PageContext here) {
    Map<String, List<Cell>> grouped = new LinkedHashMap<>();
    for (Cell cell : open) {
      String key = cell.lesion().id() + " " + cell.step().id() + " " + cell.cover().getClass();
      grouped.computeIfAbsent(key, any -> new ArrayList<>()).add(cell);
    }
    return grouped.values().stream().map(cells -> openRow(cells, here)).toList();
  }

  private static Grid.GridRow openRow(List<Cell> cells, PageContext here) {
    Cell first = cells.get(0);
    Set<String> sites = new LinkedHashSet<>();
    cells.forEach(cell -> sites.add(cell.site().title()));
    RichLine none = RichLine.of(TextPiece.quiet(here.say("none")));
    return Grid.GridRow.of(
        here.link(first.lesion()).then(TextPiece.of(": ")).then(here.link(first.step())),
        RichLine.of(String.join(", ", sites)),
        Covers.status(first.cover(), here),
        none,
        none,
        none,
        none,
        none);
  }

  private static Section lists(Room room, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
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

  private static Part.Facts kept(Room room, PageContext here) {
    RoomStock kept = room.keeps();
    List<Part.Facts.Fact> facts = new ArrayList<>();
    facts.add(new Part.Facts.Fact(here.say("fact.instruments"), here.links(kept.instruments())));
    facts.add(new Part.Facts.Fact(here.say("fact.cables"), here.links(kept.cables())));
    facts.add(
        new Part.Facts.Fact(
            here.term(Term.NEUTRAL_ELECTRODE), here.links(kept.neutralElectrodes())));
    facts.add(new Part.Facts.Fact(here.term(Term.FOOT_SWITCH), here.links(room.footSwitches())));
    List<RichLine> spares = new ArrayList<>(here.links(kept.spares()));
    kept.sparesWhere().ifPresent(where -> spares.add(RichLine.of(where.value())));
    facts.add(new Part.Facts.Fact(here.say("fact.spares"), spares));
    return new Part.Facts(facts.stream().filter(fact -> !fact.values().isEmpty()).toList());
  }

  private static Part offers(Room room, PageContext here) {
    List<Grid.GridRow> rows = new ArrayList<>();
    for (Offer offer : room.offers()) {
      rows.add(
          Grid.GridRow.of(
              here.listed(offer.lesions()),
              RichLine.joined(
                  offer.sites().stream().map(fact -> choice(fact.value(), here)).toList(), ", ")));
    }
    return new Grid(
        here.say("section.offers"),
        List.of(here.say("column.lesions"), here.say("column.sites")),
        rows);
  }

  private static RichLine choice(SiteChoice choice, PageContext here) {
    return here.link(choice);
  }
}
