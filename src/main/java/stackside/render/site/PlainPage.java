package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * A page made of sections; most pages are of this type.
 *
 * @param lead the sentence below the title, if any
 * @param kind the class of the page's body element, for the style sheet
 */
public record PlainPage(PageFrame frame, String kind, Optional<RichLine> lead, List<Section> sections)
    implements Page {

  public PlainPage {
    sections = List.copyOf(sections);
  }

  @Override
  public String template() {
    return "page.ftlh";
  }
}
