package stackside.render.site;

import java.util.stream.Stream;

/** The page with the search field. Without scripts it links to the lists instead. */
final class SearchPage implements Pages {

  /** What the template sees. */
  public record Search(PageFrame frame) implements Page {
    @Override
    public String template() {
      return "search.ftlh";
    }
  }

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at("search.html");
    return Stream.of(new Search(here.frame(here.say("menu.search"))));
  }
}
