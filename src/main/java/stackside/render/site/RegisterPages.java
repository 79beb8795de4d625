package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.render.Mark;
import stackside.render.plan.CardPlan;
import stackside.render.site.Part.Grid;

/**
 * What the register of issues says: which cards are in use, what each issue changed, and for a card
 * that is not made from the content as it is now, what has become of it.
 */
final class RegisterPages {
  private static final String CHANGES = "changes.html";

  private RegisterPages() {}

  /** What changed, and a page for each card that the content no longer makes. */
  static Stream<Page> of(Site site) {
    Register register = site.publication().editions().register();
    Set<String> made = site.cards().stream().map(CardPlan::name).collect(Collectors.toSet());
    return Stream.concat(
        Stream.of(changes(site, register)),
        register.cards().values().stream()
            .filter(card -> !made.contains(card.name()))
            .map(card -> page(card, site)));
  }

  /** The sections of the page of all cards; the register joins them once there is one. */
  static List<Section> withRegister(Here here, Section cards) {
    Register register = here.site().publication().editions().register();
    if (register.entries().isEmpty()) {
      return List.of(cards);
    }
    List<Grid.Row> rows = register.cards().values().stream().map(card -> row(card, here)).toList();
    return List.of(
        here.section(
            "register",
            new Grid(
                here.say("section.register"),
                List.of(
                    here.say("column.card"),
                    here.say("column.edition"),
                    here.say("column.state"),
                    here.say("column.copies"),
                    here.say("column.reason")),
                rows),
            new Part.Lines(List.of(here.page(here.say("register.changes"), CHANGES)))),
        cards);
  }

  private static Grid.Row row(CardEntry card, Here here) {
    return Grid.Row.of(
        here.page(card.title(), address(card)),
        edition(card, here),
        state(card, here),
        Line.of(Integer.toString(card.copies())),
        Line.of(card.reason()));
  }

  private static Line edition(CardEntry card, Here here) {
    return Line.of(
        here.say("register.edition", Integer.toString(card.edition()), here.date(card.since())));
  }

  private static String address(CardEntry card) {
    return "c/" + card.code() + "/index.html";
  }

  /** In words and shape. */
  private static Line state(CardEntry card, Here here) {
    return card.current()
        ? Here.status(Mark.DISC, here.say("register.current"))
        : Here.status(Mark.SQUARE, here.say("register.out-of-use"));
  }

  /** A card that stays at its last edition, or is out of use. */
  private static Page page(CardEntry card, Site site) {
    Here here = site.at(address(card));
    List<Line> lines = new ArrayList<>();
    lines.add(state(card, here).then(Piece.of(", ")).then(edition(card, here)));
    lines.add(
        Line.of(
            card.current()
                ? here.say("register.stays", here.date(site.publication().on()))
                : here.say("register.take-down", card.reason())));
    card.review()
        .filter(day -> card.current() && site.publication().on().isAfter(day))
        .ifPresent(day -> lines.add(Line.of(here.say("register.overdue", here.date(day)))));
    if (card.current()) {
      lines.add(here.page(here.say("card.pdf"), card.path()));
    }
    return new PlainPage(
        here.frame(card.title(), here.page(here.say("menu.cards"), "cards.html")),
        "card",
        Optional.empty(),
        List.of(
            here.section(
                "card-standing",
                new Part.Box("", lines),
                new Part.Lines(List.of(here.page(here.say("register.changes"), CHANGES))))));
  }

  private static Page changes(Site site, Register register) {
    Here here = site.at(CHANGES);
    List<Section> sections = new ArrayList<>();
    for (int i = register.entries().size() - 1; i >= 0; i--) {
      sections.add(section(register.entries().get(i), here));
    }
    if (sections.isEmpty()) {
      sections.add(here.section("changes", new Part.Say(Line.of(here.say("changes.none")))));
    }
    return new PlainPage(
        here.frame(here.say("register.changes"), here.page(here.say("menu.cards"), "cards.html")),
        "plain",
        Optional.of(Line.of(here.say("register.lead"))),
        sections);
  }

  private static Section section(RegisterEntry entry, Here here) {
    String heading =
        here.say(
            entry.by().isPresent() ? "register.withdrawn" : "register.issued",
            Integer.toString(entry.number()),
            here.date(entry.on()),
            entry.by().orElse(""));
    List<Grid.Row> rows = entry.cards().stream().map(card -> row(card, here)).toList();
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
                    here.say("column.copies"),
                    here.say("column.reason")),
                rows)));
  }
}
