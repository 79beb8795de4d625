package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Broken;
import stackside.model.ThingId;
import stackside.render.Links;
import stackside.source.Problem;

/** A page for each thing that could not be read, saying what is wrong with it. */
final class StubPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return site.unit().broken().stream()
        .filter(broken -> Links.to(broken.id()).anchor().isEmpty())
        .map(broken -> page(broken, site));
  }

  private static Page page(Broken broken, Website site) {
    PageContext here = site.at(Links.to(broken.id()).page());
    return new PlainPage(
        here.frame(title(broken.id(), here), here.page(here.say("menu.problems"), "problems.html")),
        "stub",
        Optional.empty(),
        List.of(
            here.section(
                "broken",
                new Part.Box(here.say("broken.title"), lines(broken, here)),
                new Part.Lines(List.of(here.page(here.say("broken.all"), "problems.html")))),
            here.mentions(broken.id())));
  }

  private static String title(ThingId id, PageContext here) {
    return here.kind(id.kind()) + " " + id.slug();
  }

  private static List<RichLine> lines(Broken broken, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    for (Problem problem : broken.problems()) {
      lines.add(
          RichLine.of(problem.at().file() + ":" + problem.at().line() + ": " + problem.message()));
    }
    if (lines.isEmpty()) {
      lines.add(RichLine.of(here.say("broken.by-others", broken.at().file(), broken.at().line())));
    }
    return lines;
  }
}
