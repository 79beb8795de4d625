package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.handbook.Claim;
import stackside.derive.handbook.Grounds;
import stackside.model.Citation;
import stackside.model.HandbookPage;
import stackside.model.ThingId;
import stackside.render.Links;
import stackside.render.site.Part.Grid;

/** Every numbered claim of the handbook: where it stands, its source, and who says otherwise. */
final class ClaimsPage implements Pages {
  static final String PATH = "claims.html";

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at(PATH);
    List<Section> sections = new ArrayList<>();
    for (HandbookPage page : site.unit().handbook()) {
      List<Grid.GridRow> rows =
          Grounds.of(page).claims().stream().map(claim -> row(claim, page, here)).toList();
      if (!rows.isEmpty()) {
        sections.add(
            new Section(page.id().slug(), page.title(), List.of(grid(page.title(), rows, here))));
      }
    }
    return Stream.of(
        new PlainPage(
            here.frame(
                here.say("claims.title"), here.page(here.say("menu.handbook"), "handbook.html")),
            "plain",
            Optional.of(RichLine.of(here.say("claims.lead"))),
            sections.isEmpty()
                ? List.of(here.section("claims", new Part.Say(RichLine.of(here.say("none")))))
                : sections));
  }

  private static Grid grid(String caption, List<Grid.GridRow> rows, PageContext here) {
    return new Grid(
        caption,
        Stream.of("claim", "source", "basis", "otherwise")
            .map(column -> here.say("column." + column))
            .toList(),
        rows);
  }

  private static Grid.GridRow row(Claim claim, HandbookPage page, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(
            TextPiece.link(
                claim.number() + ". " + claim.words().plain(),
                here.to(Links.to(page.id()).page()) + "#" + PageLinks.anchor(claim.number()))),
        RichLine.of(joined(claim, page, here, false)),
        RichLine.of(joined(claim, page, here, true)),
        RichLine.of(claim.otherwise().plain()));
  }

  private static String joined(Claim claim, HandbookPage page, PageContext here, boolean howKnown) {
    return String.join(
        "; ",
        claim.sources().stream()
            .map(id -> said(id, HandbookText.citation(id, page, here), here, howKnown))
            .distinct()
            .toList());
  }

  private static String said(
      ThingId id, Optional<Citation> citation, PageContext here, boolean howKnown) {
    return citation
        .map(each -> howKnown ? here.say("basis." + each.basis().value().word()) : each.title())
        .orElse(id.slug());
  }
}
