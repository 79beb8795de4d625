package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.derive.difference.Difference;
import stackside.derive.difference.Differences;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.difference.Rank;
import stackside.render.PanelChanges;
import stackside.render.PanelPlan;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;

/** What is different for somebody used to another room, most dangerous first. */
final class DifferencePages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(index(site)),
        site.analysis().differences().stream().map(differences -> page(differences, site)));
  }

  private static String path(RoomAtAsset from, RoomAtAsset to) {
    return "differences/" + slug(from) + "/" + slug(to) + ".html";
  }

  private static String slug(RoomAtAsset place) {
    return place.room().id().slug() + "--" + place.asset().id().slug();
  }

  private static String name(RoomAtAsset place) {
    return place.room().title() + ", " + place.machine().title();
  }

  private static Page index(Website site) {
    PageContext here = site.at("differences.html");
    Map<String, List<Differences>> byFrom = new LinkedHashMap<>();
    site.analysis()
        .differences()
        .forEach(
            each -> byFrom.computeIfAbsent(slug(each.from()), any -> new ArrayList<>()).add(each));
    List<Section> sections = new ArrayList<>();
    byFrom.forEach(
        (slug, all) ->
            sections.add(
                new Section(
                    "from-" + slug,
                    here.say("differences.from", name(all.get(0).from())),
                    List.of(new Part.Lines(all.stream().map(each -> line(each, here)).toList())))));
    if (sections.isEmpty()) {
      sections.add(here.section("differences", new Part.Say(RichLine.of(here.say("differences.one")))));
    }
    return new PlainPage(
        here.frame(here.say("menu.differences")),
        "plain",
        Optional.of(RichLine.of(here.say("differences.lead"))),
        sections);
  }

  private static RichLine line(Differences differences, PageContext here) {
    long silent = differences.all().stream().filter(each -> each.rank() == Rank.SILENT).count();
    return here.page(
            here.say("differences.to", name(differences.to())),
            path(differences.from(), differences.to()))
        .then(TextPiece.quiet(" " + here.say("differences.count", differences.all().size(), silent)));
  }

  private static Page page(Differences differences, Website site) {
    PageContext here = site.at(path(differences.from(), differences.to()));
    List<Section> sections = new ArrayList<>();
    sections.add(
        here.section(
            "both-panels",
            new Part.Say(RichLine.of(here.say("differences.outlined"))),
            panels(differences, here)));
    for (Rank rank : Rank.values()) {
      List<RichLine> lines = lines(differences.ranked(rank), differences, here);
      sections.add(
          here.section(
              "rank-" + rank.word(),
              lines.isEmpty()
                  ? new Part.Say(RichLine.of(here.say("differences.none")))
                  : new Part.Lines(lines)));
    }
    return new PlainPage(
        here.frame(
            here.say("differences.title", name(differences.from()), name(differences.to())),
            here.page(here.say("menu.differences"), "differences.html"),
            here.link(differences.to().room())),
        "difference",
        Optional.of(
            here.page(here.say("differences.back"), path(differences.to(), differences.from()))),
        sections);
  }

  /** One line per difference; several things that differ in the same way share a line. */
  private static List<RichLine> lines(List<Difference> some, Differences differences, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    some.stream()
        .filter(Predicate.not(Difference.AnswerOfOtherKind.class::isInstance))
        .filter(Predicate.not(Difference.KeptInOneOnly.class::isInstance))
        .forEach(each -> lines.add(DifferenceWords.of(each, differences, here)));
    Map<String, List<Difference.AnswerOfOtherKind>> answers = new LinkedHashMap<>();
    some.stream()
        .filter(Difference.AnswerOfOtherKind.class::isInstance)
        .map(Difference.AnswerOfOtherKind.class::cast)
        .forEach(
            each -> answers.computeIfAbsent(alike(each, here), any -> new ArrayList<>()).add(each));
    answers.values().forEach(each -> lines.add(answers(each, here)));
    kept(some, Difference.KeptInOneOnly.Side.TO, "difference.only-here", here)
        .ifPresent(lines::add);
    kept(some, Difference.KeptInOneOnly.Side.FROM, "difference.not-here", here)
        .ifPresent(lines::add);
    return lines;
  }

  private static String alike(Difference.AnswerOfOtherKind answer, PageContext here) {
    return answer.to().lesion().id()
        + " "
        + answer.to().step().id()
        + " "
        + answer.to().patients().id()
        + " "
        + status(answer.to(), here).pieces()
        + status(answer.from(), here).pieces();
  }

  private static RichLine status(Cell cell, PageContext here) {
    return Covers.status(cell.cover(), here);
  }

  private static RichLine answers(List<Difference.AnswerOfOtherKind> answers, PageContext here) {
    Cell to = answers.get(0).to();
    List<RichLine> sites = answers.stream().map(each -> here.link(each.to().site())).toList();
    return here.link(to.lesion())
        .then(TextPiece.of(", "))
        .then(here.link(to.step()))
        .then(TextPiece.of(" ("))
        .then(RichLine.joined(sites, ", "))
        .then(TextPiece.of("): "))
        .then(status(to, here))
        .then(
            TextPiece.of(
                ". "
                    + here.say(
                        "difference.before",
                        status(answers.get(0).from(), here).pieces().get(0).text())));
  }

  private static Optional<RichLine> kept(
      List<Difference> some, Difference.KeptInOneOnly.Side side, String key, PageContext here) {
    List<RichLine> things =
        some.stream()
            .flatMap(
                each ->
                    each instanceof Difference.KeptInOneOnly kept && kept.side() == side
                        ? Stream.of(here.link(kept.accessory()))
                        : Stream.empty())
            .toList();
    return things.isEmpty()
        ? Optional.empty()
        : Optional.of(RichLine.of(here.say(key) + " ").then(RichLine.joined(things, ", ")));
  }

  private static Part panels(Differences differences, PageContext here) {
    RoomAtAsset from = differences.from();
    RoomAtAsset to = differences.to();
    PanelPlan old = here.site().panel(from.room(), from.asset());
    PanelPlan other = here.site().panel(to.room(), to.asset());
    return new Part.Pair(
        panel(from, PanelChanges.outlined(old, other), "from", here),
        panel(to, PanelChanges.outlined(other, old), "to", here));
  }

  private static Part.Side panel(RoomAtAsset place, PanelPlan plan, String id, PageContext here) {
    return new Part.Side(
        here.link(place.room())
            .then(TextPiece.of(", "))
            .then(here.link(place.machine()))
            .then(TextPiece.of(", "))
            .then(here.link(place.asset())),
        new Html(SvgWriter.svg(SocketMap.of(plan, Sheet.PHONE), id)));
  }
}
