package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SiteGroup;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.render.Links;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** Sites, groups of sites, lesions and steps, each with the answers that involve it. */
final class AnatomyPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(
            Stream.of(sites(site), lesions(site)),
            site.unit().sites().stream().map(each -> sitePage(each, site)),
            site.unit().siteGroups().stream().map(each -> groupPage(each, site)),
            site.unit().lesions().stream().map(each -> lesionPage(each, site)),
            site.unit().steps().stream().map(each -> stepPage(each, site)))
        .flatMap(pages -> pages);
  }

  private static Page sites(Website site) {
    PageContext here = site.at("sites.html");
    return new PlainPage(
        here.frame(here.say("menu.sites")),
        "plain",
        Optional.empty(),
        List.of(
            here.section("sites", lines(site.unit().sites(), here)),
            here.section("site-groups", lines(site.unit().siteGroups(), here))));
  }

  private static Page lesions(Website site) {
    PageContext here = site.at("lesions.html");
    return new PlainPage(
        here.frame(here.say("menu.lesions")),
        "plain",
        Optional.empty(),
        List.of(
            here.section("lesions", lines(site.unit().lesions(), here)),
            here.section("steps", lines(site.unit().steps(), here))));
  }

  private static Part lines(List<? extends Thing> things, PageContext here) {
    return things.isEmpty()
        ? new Part.Say(RichLine.of(here.say("none")))
        : new Part.Lines(things.stream().map(here::link).toList());
  }

  private static Page sitePage(stackside.model.Site where, Website site) {
    PageContext here = site.at(Links.to(where.id()).page());
    List<Facts.Fact> facts = new ArrayList<>();
    also(where.also(), here).ifPresent(facts::add);
    facts.add(
        Answers.fact(here, "tract", RichLine.of(here.say("tract." + where.tract().value().word()))));
    facts.add(Answers.fact(here, "wall", RichLine.of(here.say("wall." + where.wall().value().word()))));
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("facts", new Facts(facts)));
    sections.add(answers(here, profile -> profile.allSites().contains(where)));
    sections.add(here.mentions(where.id()));
    return new PlainPage(
        here.frame(where.title(), here.page(here.say("menu.sites"), "sites.html")),
        "plain",
        Optional.empty(),
        sections);
  }

  private static Page groupPage(SiteGroup group, Website site) {
    PageContext here = site.at(Links.to(group.id()).page());
    return new PlainPage(
        here.frame(group.title(), here.page(here.say("menu.sites"), "sites.html")),
        "plain",
        Optional.empty(),
        List.of(
            here.section("sites", new Part.Lines(here.links(group.of()))),
            here.mentions(group.id())));
  }

  private static Page lesionPage(Lesion lesion, Website site) {
    PageContext here = site.at(Links.to(lesion.id()).page());
    List<Facts.Fact> facts = new ArrayList<>();
    also(lesion.also(), here).ifPresent(facts::add);
    lesion
        .shape()
        .ifPresent(
            shape ->
                facts.add(
                    Answers.fact(
                        here, "shape", RichLine.of(here.say("shape." + shape.value().word())))));
    lesion
        .kind()
        .ifPresent(
            kind -> facts.add(Answers.fact(here, "kind", RichLine.of(here.choice(kind.value())))));
    lesion
        .size()
        .ifPresent(
            size ->
                facts.add(Answers.fact(here, "size", RichLine.of(here.spans().text(size.value())))));
    facts.add(new Facts.Fact(here.say("fact.steps"), here.links(lesion.steps())));
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("facts", new Facts(facts)));
    sections.add(
        answers(
            here,
            profile ->
                profile.lesions().stream()
                    .anyMatch(each -> each.value().id().equals(lesion.id()))));
    sections.add(here.mentions(lesion.id()));
    return new PlainPage(
        here.frame(lesion.title(), here.page(here.say("menu.lesions"), "lesions.html")),
        "plain",
        Optional.empty(),
        sections);
  }

  private static Page stepPage(Step step, Website site) {
    PageContext here = site.at(Links.to(step.id()).page());
    return new PlainPage(
        here.frame(step.title(), here.page(here.say("menu.lesions"), "lesions.html")),
        "plain",
        Optional.empty(),
        List.of(
            answers(here, profile -> profile.step().value().id().equals(step.id())),
            here.mentions(step.id())));
  }

  private static Optional<Facts.Fact> also(List<Fact<String>> also, PageContext here) {
    return also.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Answers.fact(
                here,
                "also",
                RichLine.of(also.stream().map(Fact::value).collect(Collectors.joining(", ")))));
  }

  /** The answers that involve something, with the rooms that give them. */
  private static Section answers(PageContext here, Predicate<Profile> about) {
    Set<Grid.GridRow> rows = new LinkedHashSet<>();
    here.unit().profiles().stream().filter(about).forEach(profile -> rows.add(row(profile, here)));
    return here.section(
        "answers",
        rows.isEmpty()
            ? new Part.Say(RichLine.of(here.say("answers.none")))
            : new Grid(
                here.say("section.answers"),
                List.of(
                    here.say("column.for"),
                    here.say("column.sites"),
                    here.say("fact.machine"),
                    here.say("column.answer"),
                    here.say("fact.rooms")),
                List.copyOf(rows)));
  }

  private static Grid.GridRow row(Profile profile, PageContext here) {
    List<Room> rooms = here.site().served(profile);
    return Grid.GridRow.of(
        here.link(profile, Answers.question(profile)),
        RichLine.of(Answers.sites(profile)),
        here.link(profile.machine().value()),
        Answers.brief(profile, here),
        rooms.isEmpty()
            ? RichLine.of(here.say("profile.no-room"))
            : RichLine.joined(
                rooms.stream()
                    .map(room -> here.page(room.title(), Answers.page(room, profile)))
                    .toList(),
                ", "));
  }
}
