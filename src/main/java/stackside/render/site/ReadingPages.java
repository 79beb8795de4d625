package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stackside.derive.path.PathReading;
import stackside.model.HandbookPage;
import stackside.model.LearningPath;
import stackside.model.Thing;
import stackside.render.LearningRecords;
import stackside.render.Links;

/** The handbook and the paths through it. */
final class ReadingPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(
            Stream.of(handbook(site), paths(site)),
            site.unit().handbook().stream().map(page -> page(page, site)),
            site.unit().paths().stream().map(path -> page(path, site)))
        .flatMap(pages -> pages);
  }

  private static Page handbook(Website site) {
    PageContext here = site.at("handbook.html");
    List<Section> sections = new ArrayList<>();
    List<RichLine> chapters = pages(HandbookPage::isChapter, here);
    if (!chapters.isEmpty()) {
      sections.add(
          here.section(
              "chapters",
              new Part.Say(RichLine.of(here.say("handbook.chapters"))),
              new Part.Lines(chapters)));
    }
    List<RichLine> own = pages(page -> !page.isChapter(), here);
    if (chapters.isEmpty() || !own.isEmpty()) {
      sections.add(here.section("handbook", lines(own, here)));
    }
    sections.add(
        here.section(
            "claims",
            new Part.Lines(List.of(here.page(here.say("claims.title"), ClaimsPage.PATH)))));
    sections.add(
        here.section(
            "paths", lines(site.unit().paths().stream().map(p -> here.link(p)).toList(), here)));
    return new PlainPage(
        here.frame(here.say("menu.handbook")), "plain", Optional.empty(), sections);
  }

  private static List<RichLine> pages(Predicate<HandbookPage> wanted, PageContext here) {
    return here.unit().handbook().stream().filter(wanted).map(page -> here.link(page)).toList();
  }

  private static Page paths(Website site) {
    PageContext here = site.at("paths.html");
    List<RichLine> paths =
        site.unit().paths().stream()
            .map(path -> here.link(path).then(TextPiece.of(", " + path.reader().value())))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.paths")),
        "plain",
        Optional.empty(),
        List.of(
            here.section("paths", lines(paths, here)),
            here.section(
                "self-checks",
                new Part.Say(RichLine.of(here.say("self-check.lead"))),
                lines(SelfCheckPages.links(here), here)),
            here.section("practice", lines(PracticePages.links(here), here)),
            here.section(
                "explore",
                new Part.Lines(List.of(here.page(here.say("explorer.title"), ExplorerPages.PATH)))),
            here.section("records", lines(records(here), here))));
  }

  private static List<RichLine> records(PageContext here) {
    return here.unit().paths().stream()
        .map(
            path -> here.page(here.say("record.of", path.title()), LearningRecords.path(path.id())))
        .toList();
  }

  private static Part lines(List<RichLine> lines, PageContext here) {
    return lines.isEmpty() ? new Part.Say(RichLine.of(here.say("none"))) : new Part.Lines(lines);
  }

  private static Page page(HandbookPage page, Website site) {
    PageContext here = site.at(Links.to(page.id()).page());
    return new PlainPage(
        here.frame(page.title(), here.page(here.say("menu.handbook"), "handbook.html")),
        "prose",
        page.isChapter()
            ? Optional.of(RichLine.of(here.say("handbook.general")))
            : Optional.empty(),
        List.of(new Section("", "", HandbookText.of(page, here)), here.mentions(page.id())));
  }

  private static Page page(LearningPath path, Website site) {
    PageContext here = site.at(Links.to(path.id()).page());
    List<PathPage.Read> reads = new ArrayList<>();
    int minutes = 0;
    for (PathReading read : PathReading.of(path, site.unit())) {
      minutes += read.minutes();
      reads.add(
          new PathPage.Read(
              read.id().toString(),
              here.linkWithKind(read.id()),
              read.thing().map(Thing::title).orElse(read.id().slug()),
              read.minutes(),
              here.say("path.minutes", read.minutes())));
    }
    return new PathPage(
        here.frame(path.title(), here.page(here.say("menu.paths"), "paths.html")),
        path.id().slug(),
        RichLine.of(
            here.say("path.for", path.reader().value())
                + ". "
                + here.say(
                    "path.time", minutes, PathReading.WORDS_A_MINUTE, PathReading.MINUTES_TO_LOOK)),
        here.to(LearningRecords.path(path.id())),
        reads,
        List.of(here.mentions(path.id())));
  }
}
