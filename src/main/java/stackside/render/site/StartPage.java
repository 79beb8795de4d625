package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Premises;
import stackside.model.Room;
import stackside.render.Links;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;
import stackside.render.site.Part.Picks.Pick;
import stackside.source.Severity;

/** The start page and the list of rooms, from which readers pick theirs. */
final class StartPage implements Pages {
  private static final double THUMBNAIL = 44;

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(start(site), rooms(site));
  }

  private static Page start(Website site) {
    PageContext here = site.at("index.html");
    List<Section> sections = new ArrayList<>(byLocation(here));
    sections.add(now(here));
    return new PlainPage(
        here.frame(here.unit().details().name().value()),
        "start",
        Optional.of(RichLine.of(here.say("start.lead"))),
        sections);
  }

  private static Page rooms(Website site) {
    PageContext here = site.at("rooms.html");
    return new PlainPage(
        here.frame(here.say("menu.rooms")),
        "start",
        Optional.of(RichLine.of(here.say("start.lead"))),
        byLocation(here));
  }

  private static List<Section> byLocation(PageContext here) {
    List<Section> sections = new ArrayList<>();
    for (Premises location : here.unit().details().locations()) {
      List<Pick> picks =
          here.unit().rooms().stream()
              .filter(room -> room.location().value().id().equals(location.id()))
              .map(room -> pick(room, here))
              .toList();
      if (!picks.isEmpty()) {
        sections.add(
            new Section(
                Links.anchor(location.id()), location.title(), List.of(new Part.Picks(picks))));
      }
    }
    return sections;
  }

  private static Pick pick(Room room, PageContext here) {
    List<String> assets =
        room.assets().stream()
            .map(Fact::value)
            .map(asset -> asset.machine().value().title() + ", " + asset.title())
            .toList();
    return new Pick(
        room.title(),
        Links.to(room.id()).from(here.path()),
        String.join("; ", assets),
        room.assets().stream().findFirst().map(asset -> thumbnail(room, asset.value(), here)));
  }

  private static Html thumbnail(Room room, Asset asset, PageContext here) {
    return new Html(
        SvgWriter.svg(
            SocketMap.thumbnail(here.site().panel(room, asset), THUMBNAIL),
            "panel-" + room.id().slug()));
  }

  /** What has changed and what is due. */
  private static Section now(PageContext here) {
    long errors =
        here.site().publication().problems().stream()
            .filter(problem -> problem.severity() == Severity.ERROR)
            .count();
    List<RichLine> lines = new ArrayList<>();
    lines.add(here.page(here.say("start.problems", errors), "problems.html"));
    lines.add(
        here.page(here.say("start.standing", StandingPage.open(here.site())), "standing.html"));
    DuePage.next(here.site())
        .ifPresent(day -> lines.add(here.page(here.say("start.due", here.date(day)), "due.html")));
    here.site()
        .publication()
        .editions()
        .register()
        .last()
        .ifPresent(
            entry ->
                lines.add(
                    here.page(here.say("start.changed", here.date(entry.on())), "changes.html")));
    return here.section("now", new Part.Lines(lines));
  }
}
