package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * A page of sections below one another; most pages are one.
 *
 * @param lead the sentence below the title, if any
 * @param kind the class of the page's body, for the style sheet
 */
public record PlainPage(Frame frame, String kind, Optional<Line> lead, List<Section> sections)
    implements Page {

  public PlainPage {
    sections = List.copyOf(sections);
  }

  @Override
  public String template() {
    return "page.ftlh";
  }
}
