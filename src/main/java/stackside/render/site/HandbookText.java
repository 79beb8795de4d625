package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.derive.handbook.ChapterPart;
import stackside.derive.handbook.Claim;
import stackside.derive.handbook.Grounds;
import stackside.model.Citation;
import stackside.model.CitationBasis;
import stackside.model.HandbookPage;
import stackside.model.Prose;
import stackside.model.ThingId;

/**
 * Splits a handbook page into parts: prose, with the figures that it asks for in between, the
 * unit's remarks on a chapter of the program, and the claims with their sources at the end.
 */
final class HandbookText {
  private final HandbookPage page;
  private final PageContext here;
  private final PageLinks links;
  private final List<Part> parts = new ArrayList<>();
  private final List<Prose.Block> prose = new ArrayList<>();
  private Optional<ChapterPart> within = Optional.empty();
  private boolean remarked;
  private int figures;

  private HandbookText(HandbookPage page, PageContext here, PageLinks links) {
    this.page = page;
    this.here = here;
    this.links = links;
  }

  static List<Part> of(HandbookPage page, PageContext here) {
    Grounds grounds = Grounds.of(page);
    PageLinks links = new PageLinks(here, grounds.claims(), claim -> isRecalled(claim, page, here));
    HandbookText text = new HandbookText(page, here, links);
    grounds.body().forEach(text::add);
    text.flush();
    text.remarks();
    text.claims(grounds.claims());
    return text.parts;
  }

  private void add(Prose.Block block) {
    if (block instanceof Prose.Figure figure) {
      flush();
      figures++;
      parts.addAll(HandbookFigures.parts(figure, "figure-" + figures, here));
      return;
    }
    begin(block);
    prose.add(block);
  }

  /** A heading of the upper levels begins a part of the page. */
  private void begin(Prose.Block block) {
    if (block instanceof Prose.Heading heading && heading.level() <= 2) {
      flush();
      within = ChapterPart.begunBy(heading);
      if (within.stream().anyMatch(ChapterPart.TEST_YOURSELF::equals)) {
        remarks();
      }
    }
  }

  private void flush() {
    if (!prose.isEmpty()) {
      parts.add(new Part.Text(new Html(html())));
      prose.clear();
    }
  }

  private String html() {
    if (within.isEmpty()) {
      return html(prose);
    }
    return switch (within.orElseThrow()) {
      case REMEMBER -> "<div class=\"remember\">\n" + html(prose) + "</div>\n";
      case TEST_YOURSELF -> test();
      case IN_YOUR_ROOM, SOURCES -> html(prose);
    };
  }

  private String html(List<Prose.Block> blocks) {
    return ProseHtml.linked(new Prose(page.at(), blocks), here, links);
  }

  /** The question is shown; the answer opens below it. */
  private String test() {
    int end = Math.min(2, prose.size());
    List<Prose.Block> answer = prose.subList(end, prose.size());
    return html(prose.subList(0, end))
        + (answer.isEmpty()
            ? ""
            : "<details class=\"reply\">\n<summary>"
                + ProseHtml.escaped(here.say("handbook.answer"))
                + "</summary>\n"
                + html(answer)
                + "</details>\n");
  }

  private void remarks() {
    List<Prose.Block> blocks = page.remarks().map(Prose::blocks).orElse(List.of());
    if (remarked || blocks.isEmpty()) {
      return;
    }
    remarked = true;
    parts.add(
        new Part.Text(
            new Html("<h3>" + ProseHtml.escaped(here.say("handbook.remarks")) + "</h3>\n")));
    Optional<ChapterPart> outside = within;
    within = Optional.empty();
    blocks.forEach(
        block -> {
          if (block instanceof Prose.Figure) {
            add(block);
          } else {
            prose.add(block);
          }
        });
    flush();
    within = outside;
    parts.add(new Part.Say(RichLine.of(TextPiece.quiet(here.say("handbook.remarks.own")))));
  }

  private void claims(List<Claim> claims) {
    if (claims.isEmpty()) {
      return;
    }
    StringBuilder out = new StringBuilder();
    out.append("<h2>")
        .append(ProseHtml.escaped(here.say("handbook.sources")))
        .append("</h2>\n<ol class=\"claims\">\n");
    for (Claim claim : claims) {
      out.append(
              "<li id=\"%s\" value=\"%d\">"
                  .formatted(PageLinks.anchor(claim.number()), claim.number()))
          .append(ProseHtml.inline(claim.words(), here))
          .append("<p class=\"quiet\">")
          .append(
              claim.sources().stream()
                  .map(id -> ProseHtml.escaped(source(id)))
                  .collect(Collectors.joining("<br>\n")))
          .append("</p><p class=\"quiet\">")
          .append(ProseHtml.escaped(here.say("handbook.otherwise")))
          .append(' ')
          .append(ProseHtml.inline(claim.otherwise(), here))
          .append("</p></li>\n");
    }
    parts.add(new Part.Text(new Html(out.append("</ol>\n").toString())));
  }

  /** A publication in full, and how we know what it says. */
  private String source(ThingId id) {
    return citation(id, page, here)
        .map(
            citation ->
                here.say(
                    "handbook.source",
                    citation.title(),
                    citation.work().value(),
                    citation.in().map(in -> in.value() + ". ").orElse(""),
                    here.say("handbook.basis." + citation.basis().value().word())))
        .orElse(id.slug());
  }

  private static boolean isRecalled(Claim claim, HandbookPage page, PageContext here) {
    return claim.sources().stream()
        .flatMap(id -> citation(id, page, here).stream())
        .anyMatch(citation -> citation.basis().value() == CitationBasis.RECALLED);
  }

  /** The publication of this id, as the unit describes it or as the program does. */
  static Optional<Citation> citation(ThingId id, HandbookPage page, PageContext here) {
    return here.unit()
        .find(id)
        .filter(Citation.class::isInstance)
        .map(Citation.class::cast)
        .or(() -> page.borrowed().stream().filter(each -> each.id().equals(id)).findFirst());
  }
}
