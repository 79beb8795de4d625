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
import stackside.model.Lesion;
import stackside.model.Profile;
import stackside.model.Room;

/**
 * Choosing a room, then a site, then a lesion, then the answer. Without scripts, each page is a
 * readable list; a script turns the list into steps.
 */
final class ChooserPages implements Pages {

  /**
   * The chooser of one room.
   *
   * @param rooms all rooms, so that the reader can switch
   */
  public record Chooser(PageFrame frame, String room, List<PageFrame.Link> rooms, List<SiteChoice> sites)
      implements Page {
    public Chooser {
      rooms = List.copyOf(rooms);
      sites = List.copyOf(sites);
    }

    @Override
    public String template() {
      return "choose.ftlh";
    }
  }

  public record SiteChoice(String id, String name, List<LesionChoice> lesions) {
    public SiteChoice {
      lesions = List.copyOf(lesions);
    }
  }

  /** A lesion at a site with its answers, one per step and generator. */
  public record LesionChoice(String id, String name, List<AnswerChoice> answers) {
    public LesionChoice {
      answers = List.copyOf(answers);
    }
  }

  /** One answer or a named gap; a gap has an empty address. */
  public record AnswerChoice(String step, String href, RichLine answer, List<RichLine> settings) {
    public AnswerChoice {
      settings = List.copyOf(settings);
    }
  }

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(rooms(site)), site.unit().rooms().stream().map(room -> room(room, site)));
  }

  private static Page rooms(Website site) {
    PageContext here = site.at("choose.html");
    List<Part.Picks.Pick> picks =
        site.unit().rooms().stream()
            .map(
                room ->
                    new Part.Picks.Pick(
                        room.title(),
                        here.to(page(room)),
                        room.location().value().title(),
                        Optional.empty()))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.choose")),
        "choose",
        Optional.of(RichLine.of(here.say("choose.lead"))),
        List.of(here.section("choose-room", new Part.Picks(picks))));
  }

  private static String page(Room room) {
    return "choose/" + room.id().slug() + ".html";
  }

  private static Page room(Room room, Website site) {
    PageContext here = site.at(page(room));
    Map<stackside.model.Site, Map<Lesion, List<Cell>>> asked = new LinkedHashMap<>();
    for (Cell cell : site.analysis().coverage().of(room)) {
      asked
          .computeIfAbsent(cell.site(), any -> new LinkedHashMap<>())
          .computeIfAbsent(cell.lesion(), any -> new ArrayList<>())
          .add(cell);
    }
    List<SiteChoice> sites = new ArrayList<>();
    asked.forEach((where, lesions) -> sites.add(siteChoice(room, where, lesions, here)));
    List<PageFrame.Link> rooms =
        site.unit().rooms().stream()
            .map(
                other ->
                    new PageFrame.Link(
                        other.title(), here.to(page(other)), other.equals(room) ? "here" : ""))
            .toList();
    return new Chooser(
        here.frame(
            here.say("choose.title", room.title()),
            here.page(here.say("menu.choose"), "choose.html"),
            here.link(room)),
        room.title(),
        rooms,
        sites);
  }

  private static SiteChoice siteChoice(
      Room room, stackside.model.Site where, Map<Lesion, List<Cell>> lesions, PageContext here) {
    List<LesionChoice> choices = new ArrayList<>();
    lesions.forEach(
        (lesion, cells) ->
            choices.add(
                new LesionChoice(
                    where.id().slug() + "--" + lesion.id().slug(),
                    lesion.title(),
                    answers(room, cells, here))));
    return new SiteChoice(where.id().slug(), where.title(), choices);
  }

  private static List<AnswerChoice> answers(Room room, List<Cell> cells, PageContext here) {
    Set<AnswerChoice> choices = new LinkedHashSet<>();
    for (Cell cell : cells) {
      String step = step(room, cell);
      List<Profile> found = new ArrayList<>(cell.cover().preferred());
      found.addAll(cell.cover().alternatives());
      if (cell.cover().preferred().size() != 1) {
        choices.add(new AnswerChoice(step, "", Covers.status(cell.cover(), here), List.of()));
      }
      found.forEach(profile -> choices.add(answer(room, step, profile, here)));
    }
    return List.copyOf(choices);
  }

  private static String step(Room room, Cell cell) {
    String step = cell.step().title();
    if (room.assets().size() > 1) {
      step += ", " + cell.machine().title();
    }
    return room.patients().size() > 1 ? step + ", " + cell.patients().title() : step;
  }

  private static AnswerChoice answer(Room room, String step, Profile profile, PageContext here) {
    String words =
        profile.alternative().map(other -> step + ": " + other.name().value()).orElse(step);
    return new AnswerChoice(
        words,
        here.to(Answers.page(room, profile)),
        Answers.status(profile, here),
        Answers.summary(profile, here));
  }
}
