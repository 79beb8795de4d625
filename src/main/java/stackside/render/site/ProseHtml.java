package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.derive.handbook.Grounds;
import stackside.model.HandbookPage;
import stackside.model.Prose;
import stackside.render.Numbers;

/** Converts prose to HTML. This is the only place where the unit's text becomes mark-up. */
final class ProseHtml {
  private final PageContext here;
  private final int deepest;
  private final Optional<PageLinks> links;
  private final StringBuilder out = new StringBuilder();
  private boolean mayLink = true;

  private ProseHtml(PageContext here, int deepest, Optional<PageLinks> links) {
    this.here = here;
    this.deepest = deepest;
    this.links = links;
  }

  /**
   * The prose as HTML for a page.
   *
   * @param below the level of the heading above it
   */
  static Html of(Prose prose, PageContext here, int below) {
    ProseHtml html = new ProseHtml(here, below, Optional.empty());
    prose.blocks().forEach(html::block);
    return new Html(html.out.toString());
  }

  /** Prose of the handbook, with the links that its pages get by themselves. */
  static String linked(Prose prose, PageContext here, PageLinks links) {
    ProseHtml html = new ProseHtml(here, 1, Optional.of(links));
    prose.blocks().forEach(html::block);
    return html.out.toString();
  }

  /** The words of a text that is a single paragraph. */
  static String inline(Prose prose, PageContext here) {
    ProseHtml html = new ProseHtml(here, 1, Optional.empty());
    prose.blocks().stream()
        .filter(Prose.Paragraph.class::isInstance)
        .map(Prose.Paragraph.class::cast)
        .forEach(paragraph -> html.inline(paragraph.words()));
    return html.out.toString();
  }

  private void block(Prose.Block block) {
    if (block instanceof Prose.Heading heading) {
      heading(heading);
    } else if (block instanceof Prose.Paragraph paragraph) {
      element("p", paragraph.words());
    } else if (block instanceof Prose.Items items) {
      items(items);
    } else if (block instanceof Prose.Table table) {
      table(table);
    } else if (block instanceof Prose.Figure figure) {
      out.append("<p class=\"broken\">")
          .append(escaped(here.say("figure.out-of-place", figure.name())))
          .append("</p>\n");
    } else {
      throw new IllegalStateException("unknown block of prose: " + block);
    }
  }

  /** Headings of the text come below the page's own and keep their order; the first level is 2. */
  private void heading(Prose.Heading heading) {
    int level = Math.min(6, Math.max(heading.level(), 2) - 1 + deepest);
    mayLink = false;
    element("h" + level, heading.words());
    mayLink = true;
  }

  private void items(Prose.Items items) {
    String list = items.order() == Prose.Order.NUMBERED ? "ol" : "ul";
    out.append('<').append(list).append(">\n");
    for (List<Prose.Block> item : items.items()) {
      out.append("<li>");
      item(item);
      out.append("</li>\n");
    }
    out.append("</").append(list).append(">\n");
  }

  /** The first paragraph of a list item gets no space around it. */
  private void item(List<Prose.Block> item) {
    boolean first = true;
    for (Prose.Block block : item) {
      if (first && block instanceof Prose.Paragraph paragraph) {
        inline(paragraph.words());
      } else {
        block(block);
      }
      first = false;
    }
  }

  private void table(Prose.Table table) {
    out.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"")
        .append(escaped(here.words().say("table.scroll")))
        .append("\"><table>\n<thead><tr>");
    for (List<Prose.Inline> cell : table.header()) {
      out.append("<th scope=\"col\">");
      inline(cell);
      out.append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (List<List<Prose.Inline>> row : table.rows()) {
      out.append("<tr>");
      for (List<Prose.Inline> cell : row) {
        element("td", cell);
      }
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  private void element(String name, List<Prose.Inline> words) {
    out.append('<').append(name).append('>');
    inline(words);
    out.append("</").append(name).append(">\n");
  }

  private void inline(List<Prose.Inline> words) {
    words.forEach(this::piece);
  }

  private void piece(Prose.Inline piece) {
    if (piece instanceof Prose.Words words) {
      out.append(
          links
              .filter(any -> mayLink)
              .map(each -> each.html(words.text()))
              .orElseGet(() -> escaped(Numbers.bind(words.text()))));
    } else if (piece instanceof Prose.Literal literal) {
      out.append("<code>").append(escaped(literal.text())).append("</code>");
    } else if (piece instanceof Prose.Strong strong) {
      within("strong", strong.words());
    } else if (piece instanceof Prose.Emphasis emphasis) {
      emphasis(emphasis);
    } else if (piece instanceof Prose.ThingLink link) {
      here.href(link.target())
          .ifPresentOrElse(href -> link(href, link.words()), () -> missing(link));
    } else if (piece instanceof Prose.WebLink link) {
      link(link.address(), link.words());
    } else {
      throw new IllegalStateException("unknown piece of prose: " + piece);
    }
  }

  /** How a paragraph of the handbook is known is said quietly. */
  private void emphasis(Prose.Emphasis emphasis) {
    if (links.isPresent() && Grounds.isMark(emphasis)) {
      mayLink = false;
      out.append("<span class=\"ground\">");
      inline(emphasis.words());
      out.append("</span>");
      mayLink = true;
    } else {
      within("em", emphasis.words());
    }
  }

  private void within(String name, List<Prose.Inline> words) {
    out.append('<').append(name).append('>');
    inline(words);
    out.append("</").append(name).append('>');
  }

  private void link(String href, List<Prose.Inline> words) {
    out.append("<a href=\"").append(escaped(href)).append("\">");
    boolean before = mayLink;
    mayLink = false;
    inline(words);
    mayLink = before;
    out.append("</a>");
  }

  /** A chapter of the program may name another that the unit has left out. */
  private void missing(Prose.ThingLink link) {
    if (HandbookPage.isOfTheProgram(link.at())) {
      inline(link.words());
    } else {
      broken(link.words());
    }
  }

  private void broken(List<Prose.Inline> words) {
    inline(words);
    out.append(" <span class=\"broken\">(")
        .append(escaped(here.words().say("broken.link")))
        .append(")</span>");
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
