package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.RegisterEntry;
import stackside.render.Mark;
import stackside.render.site.Part.Grid;

/** What every issue and withdrawal changed, the latest first. */
final class ChangesPage implements Pages {

  @Override
  public Stream<Page> of(Site site) {
    Here here = site.at("changes.html");
    List<Section> sections = new ArrayList<>();
    for (RegisterEntry entry : site.publication().editions().register().entries()) {
      sections.add(0, section(entry, here));
    }
    if (sections.isEmpty()) {
      sections.add(here.section("changes", new Part.Say(Line.of(here.say("changes.none")))));
    }
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.changes")),
            "plain",
            Optional.of(here.page(here.say("changes.cards"), "cards.html")),
            sections));
  }

  private static Section section(RegisterEntry entry, Here here) {
    String key = entry.by().isPresent() ? "changes.withdrawn" : "changes.issued";
    String heading = here.say(key, entry.number(), Here.date(entry.on()), entry.by().orElse(""));
    return new Section(
        "entry-" + entry.number(),
        heading,
        List.of(
            new Grid(
                heading,
                List.of(
                    here.say("column.card"),
                    here.say("column.edition"),
                    here.say("column.state"),
                    here.say("column.why")),
                entry.cards().stream().map(card -> row(card, here)).toList())));
  }

  private static Grid.Row row(CardEntry card, Here here) {
    boolean current = card.state() == CardEntry.State.CURRENT;
    return Grid.Row.of(
        Line.of(card.title()),
        Line.of(Integer.toString(card.edition())),
        Here.status(
            current ? Mark.DISC : Mark.SQUARE,
            here.say(current ? "changes.print" : "changes.take-down")),
        Line.of(card.reason()));
  }
}
