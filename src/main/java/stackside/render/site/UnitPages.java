package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Alarm;
import stackside.model.Citation;
import stackside.model.Fact;
import stackside.model.Premises;
import stackside.model.SignedKind;
import stackside.model.Term;
import stackside.model.Thing;
import stackside.model.UnitDetails;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** The unit as a whole: contacts, signatories, patient groups, terms, sources. */
final class UnitPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(contacts(site), unit(site), sources(site));
  }

  private static Page contacts(Website site) {
    PageContext here = site.at("contacts.html");
    List<Section> sections = new ArrayList<>();
    for (Premises location : site.unit().details().locations()) {
      List<Grid.GridRow> rows =
          location.contacts().stream()
              .map(
                  contact ->
                      new Grid.GridRow(
                          Optional.of(Links.anchor(contact.id())),
                          RichLine.of(contact.title()),
                          List.of(
                              RichLine.of(TextPiece.strong(contact.phone().value())),
                              RichLine.of(contact.hours().value().words()))))
              .toList();
      List<RichLine> rooms =
          site.unit().rooms().stream()
              .filter(room -> room.location().value().id().equals(location.id()))
              .map(room -> here.link(room))
              .toList();
      sections.add(
          new Section(
              Links.anchor(location.id()),
              location.title(),
              List.of(
                  new Grid(
                      here.say("contacts.caption", location.title()),
                      List.of(
                          here.say("column.whom"),
                          here.say("column.phone"),
                          here.say("column.hours")),
                      rows),
                  new Facts(
                      List.of(
                          new Facts.Fact(
                              here.say("fact.rooms"),
                              rooms.isEmpty()
                                  ? List.of(RichLine.of(here.say("none")))
                                  : rooms))))));
    }
    return new PlainPage(
        here.frame(here.say("menu.contacts")), "plain", Optional.empty(), sections);
  }

  private static Page unit(Website site) {
    PageContext here = site.at("unit.html");
    UnitDetails details = site.unit().details();
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(Answers.fact(here, "name", RichLine.of(details.name().value())));
    facts.add(
        Answers.fact(
            here, "status", RichLine.of(here.say("unit." + details.status().value().word()))));
    facts.add(Answers.fact(here, "address", RichLine.of(details.address().value().toString())));
    facts.add(
        Answers.fact(
            here,
            "reading-distance",
            RichLine.of(
                here.say(
                    "unit.reading",
                    Numbers.text(details.readingDistance().near().value()),
                    Numbers.text(details.readingDistance().far().value())))));
    details.makeSafe().stream()
        .map(Fact::value)
        .reduce((first, second) -> first + " " + second)
        .ifPresent(words -> facts.add(Answers.fact(here, "make-safe", RichLine.of(words))));
    return new PlainPage(
        here.frame(here.say("menu.unit")),
        "plain",
        Optional.empty(),
        Stream.of(
                Stream.of(
                    here.section("facts", new Facts(facts)),
                    here.section("signatures", signs(here), signers(here)),
                    here.section("alarms", alarms(here)),
                    here.section("words", words(here))),
                patients(here),
                roles(here))
            .flatMap(sections -> sections)
            .toList());
  }

  private static Stream<Section> patients(PageContext here) {
    return here.unit().details().patients().stream()
        .map(
            group ->
                named(
                    group,
                    here,
                    Answers.fact(
                        here, "weight", RichLine.of(here.spans().text(group.weight().value())))));
  }

  private static Stream<Section> roles(PageContext here) {
    return here.unit().details().roles().stream().map(role -> named(role, here));
  }

  /** A thing without its own page: its facts and what mentions it. */
  private static Section named(Thing thing, PageContext here, Facts.Fact... facts) {
    List<Part> parts = new ArrayList<>();
    if (facts.length > 0) {
      parts.add(new Facts(List.of(facts)));
    }
    List<RichLine> mentions =
        here.site().mentions().of(thing.id()).stream()
            .filter(other -> here.unit().find(other).isPresent())
            .map(here::linkWithKind)
            .toList();
    if (mentions.isEmpty()) {
      parts.add(new Part.Say(RichLine.of(here.say("mentions.none"))));
    } else {
      parts.add(new Part.Say(RichLine.of(here.say("mentions.by"))));
      parts.add(new Part.Lines(mentions));
    }
    return new Section(
        Links.anchor(thing.id()),
        here.say("mentions.heading", here.kind(thing.id().kind()), thing.title()),
        parts);
  }

  private static Grid signs(PageContext here) {
    UnitDetails details = here.unit().details();
    return new Grid(
        here.say("section.signatures"),
        List.of(here.say("column.kind"), here.say("column.signed-by"), here.say("column.review")),
        Stream.concat(
                details.signatures().entrySet().stream()
                    .filter(entry -> !isSignedByAll(entry.getKey()))
                    .map(entry -> signs(entry.getKey(), here.listed(entry.getValue()), here)),
                Stream.of(
                    signs(SignedKind.POLICIES, RichLine.of(here.say("signatures.all")), here)))
            .toList());
  }

  /** Who lifts, and whether one person may sign in two roles. */
  private static Facts signers(PageContext here) {
    UnitDetails details = here.unit().details();
    List<RichLine> lifting =
        details
            .lifts()
            .map(role -> List.of(here.link(role.value())))
            .orElseGet(
                () ->
                    details.signatures().getOrDefault(SignedKind.ASSET, List.of()).stream()
                        .map(role -> here.link(role.value()))
                        .toList());
    boolean two = details.onePersonTwoRoles().map(Fact::value).orElse(false);
    return new Facts(
        List.of(
            new Facts.Fact(here.say("fact.lifts"), lifting),
            Answers.fact(here, "one-person-two-roles", RichLine.of(here.say(two ? "yes" : "no")))));
  }

  private static Grid alarms(PageContext here) {
    return new Grid(
        here.say("section.alarms"),
        List.of(here.say("column.when"), here.say("column.then")),
        Stream.of(Alarm.values())
            .map(
                alarm ->
                    Grid.GridRow.of(
                        RichLine.of(here.choice(alarm)),
                        RichLine.of(here.choice(here.unit().details().answer(alarm)))))
            .toList());
  }

  private static boolean isSignedByAll(SignedKind kind) {
    return kind == SignedKind.POLICIES;
  }

  private static Grid.GridRow signs(SignedKind kind, RichLine roles, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(here.choice(kind)),
        roles,
        Optional.ofNullable(here.unit().details().reviewAfter().get(kind))
            .map(months -> RichLine.of(Numbers.text(months.value())))
            .orElse(RichLine.of(here.say("none"))));
  }

  private static Grid words(PageContext here) {
    return new Grid(
        here.say("section.words"),
        List.of(here.say("column.usual"), here.say("column.own")),
        Stream.of(Term.values())
            .map(
                term -> Grid.GridRow.of(RichLine.of(here.usual(term)), RichLine.of(here.own(term))))
            .toList());
  }

  private static Page sources(Website site) {
    PageContext here = site.at("sources.html");
    List<Section> sections =
        site.unit().citations().stream().map(citation -> source(citation, here)).toList();
    return new PlainPage(
        here.frame(here.say("menu.sources")),
        "plain",
        Optional.of(RichLine.of(here.say("sources.lead") + unsigned(site, here))),
        sections.isEmpty()
            ? List.of(here.section("sources", new Part.Say(RichLine.of(here.say("none")))))
            : sections);
  }

  /** The list is published unsigned too, because no card depends on it; it then says so. */
  private static String unsigned(Website site, PageContext here) {
    return site.standing()
        .signaturesOf(site.unit().sources().id())
        .filter(standing -> !standing.missing().isEmpty())
        .map(standing -> " " + here.say("sources.unsigned"))
        .orElse("");
  }

  private static Section source(Citation citation, PageContext here) {
    return named(
        citation,
        here,
        new Facts.Fact(here.say("column.title"), List.of(RichLine.of(citation.work().value()))),
        new Facts.Fact(
            here.say("column.in"),
            List.of(RichLine.of(citation.in().map(fact -> fact.value()).orElse(here.say("none"))))),
        new Facts.Fact(
            here.say("column.basis"),
            List.of(RichLine.of(here.say("basis." + citation.basis().value().word())))));
  }
}
