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
  public Stream<Page> of(Site site) {
    return site.unit().broken().stream()
        .filter(broken -> Links.to(broken.id()).anchor().isEmpty())
        .map(broken -> page(broken, site));
  }

  private static Page page(Broken broken, Site site) {
    Here here = site.at(Links.to(broken.id()).page());
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

  private static String title(ThingId id, Here here) {
    return here.kind(id.kind()) + " " + id.slug();
  }

  private static List<Line> lines(Broken broken, Here here) {
    List<Line> lines = new ArrayList<>();
    for (Problem problem : broken.problems()) {
      lines.add(
          Line.of(problem.at().file() + ":" + problem.at().line() + ": " + problem.message()));
    }
    if (lines.isEmpty()) {
      lines.add(Line.of(here.say("broken.by-others", broken.at().file(), broken.at().line())));
    }
    return lines;
  }
}
