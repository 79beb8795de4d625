package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Cable;
import stackside.model.ConnectorId;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.RoomStock;
import stackside.model.Plug;
import stackside.model.Room;
import stackside.model.Term;
import stackside.model.Thing;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.PedalPlan;
import stackside.render.site.Part.Facts;

/** Things that plug in: instruments, cables, neutral electrodes, foot switches. */
final class PlugInPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(
            Stream.of(index(site)),
            site.unit().instruments().stream().map(each -> instrument(each, site)),
            site.unit().cables().stream().map(each -> cable(each, site)),
            site.unit().electrodes().stream().map(each -> electrode(each, site)),
            site.unit().footSwitches().stream().map(each -> footSwitch(each, site)))
        .flatMap(pages -> pages);
  }

  private static Page index(Website site) {
    PageContext here = site.at("instruments.html");
    return new PlainPage(
        here.frame(here.say("menu.instruments")),
        "plain",
        Optional.empty(),
        List.of(
            list("instruments", here.say("section.instruments"), site.unit().instruments(), here),
            list("cables", here.say("section.cables"), site.unit().cables(), here),
            list("electrodes", here.term(Term.NEUTRAL_ELECTRODE), site.unit().electrodes(), here),
            list("foot-switches", here.term(Term.FOOT_SWITCH), site.unit().footSwitches(), here)));
  }

  private static Section list(String id, String heading, List<? extends Thing> things, PageContext here) {
    return new Section(
        id,
        heading,
        List.of(
            things.isEmpty()
                ? new Part.Say(RichLine.of(here.say("none")))
                : new Part.Lines(things.stream().map(here::link).toList())));
  }

  private static Page instrument(Instrument instrument, Website site) {
    PageContext here = site.at(Links.to(instrument.id()).page());
    List<Facts.Fact> facts = new ArrayList<>();
    if (!instrument.also().isEmpty()) {
      facts.add(
          Answers.fact(
              here,
              "also",
              RichLine.of(
                  instrument.also().stream().map(Fact::value).collect(Collectors.joining(", ")))));
    }
    facts.add(Answers.fact(here, "energy-kind", RichLine.of(here.choice(instrument.kind().value()))));
    facts.add(Answers.fact(here, "connector", form(instrument.connector().value(), here)));
    facts.add(
        Answers.fact(
            here, "rated-voltage", RichLine.of(Numbers.text(instrument.ratedVoltage().value()))));
    instrument
        .singleUse()
        .ifPresent(
            once ->
                facts.add(
                    Answers.fact(
                        here, "single-use", RichLine.of(here.say(once.value() ? "yes" : "no")))));
    facts.add(kept(here, keeps -> contains(keeps.instruments(), instrument)));
    return page(instrument, facts, Optional.empty(), here);
  }

  private static Page cable(Cable cable, Website site) {
    PageContext here = site.at(Links.to(cable.id()).page());
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(Answers.fact(here, "plug", form(cable.plug().value(), here)));
    facts.add(Answers.fact(here, "connector", form(cable.connector().value(), here)));
    facts.add(
        Answers.fact(here, "rated-voltage", RichLine.of(Numbers.text(cable.ratedVoltage().value()))));
    facts.add(kept(here, keeps -> contains(keeps.cables(), cable)));
    return page(cable, facts, Optional.empty(), here);
  }

  private static Page electrode(Electrode electrode, Website site) {
    PageContext here = site.at(Links.to(electrode.id()).page());
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(
        Answers.fact(here, "area", RichLine.of(here.say("area." + electrode.area().value().word()))));
    facts.add(Answers.fact(here, "plug", form(electrode.plug().value(), here)));
    facts.add(
        Answers.fact(here, "patients", RichLine.of(here.spans().text(electrode.patients().value()))));
    electrode
        .heatingFactor()
        .ifPresent(
            factor ->
                facts.add(
                    Answers.fact(here, "heating-factor", RichLine.of(Numbers.text(factor.value())))));
    facts.add(kept(here, keeps -> contains(keeps.neutralElectrodes(), electrode)));
    return page(electrode, facts, Optional.empty(), here);
  }

  private static Page footSwitch(FootSwitch footSwitch, Website site) {
    PageContext here = site.at(Links.to(footSwitch.id()).page());
    List<RichLine> rooms =
        here.unit().rooms().stream()
            .filter(room -> contains(room.footSwitches(), footSwitch))
            .map(here::link)
            .toList();
    Facts.Fact where =
        rooms.isEmpty()
            ? Answers.fact(here, "rooms", RichLine.of(here.say("kept.nowhere")))
            : new Facts.Fact(here.say("fact.rooms"), rooms);
    return page(
        footSwitch,
        List.of(where),
        Optional.of(
            here.section(
                "pedals",
                SocketParts.pedals(PedalPlan.of(footSwitch, here.words()), "pedals", here))),
        here);
  }

  private static Page page(
      Thing thing, List<Facts.Fact> facts, Optional<Section> drawing, PageContext here) {
    List<Section> sections = new ArrayList<>();
    drawing.ifPresent(sections::add);
    sections.add(here.section("facts", new Facts(facts)));
    sections.add(here.mentions(thing.id()));
    return new PlainPage(
        here.frame(
            Numbers.bind(thing.title()),
            here.page(here.say("menu.instruments"), "instruments.html")),
        "plain",
        Optional.empty(),
        sections);
  }

  /** The name of a plug's form, as some machine calls it. */
  private static RichLine form(ConnectorId form, PageContext here) {
    return RichLine.of(
        here.unit().machines().stream()
            .flatMap(machine -> machine.plug(form).stream())
            .map(Plug::name)
            .map(Fact::value)
            .findFirst()
            .orElse(form.slug()));
  }

  private static Facts.Fact kept(PageContext here, Predicate<RoomStock> there) {
    List<RichLine> rooms =
        here.unit().rooms().stream()
            .filter(room -> there.test(room.keeps()))
            .map((Room room) -> here.link(room))
            .toList();
    return rooms.isEmpty()
        ? Answers.fact(here, "kept-in", RichLine.of(here.say("kept.nowhere")))
        : new Facts.Fact(here.say("fact.kept-in"), rooms);
  }

  private static <T extends Thing> boolean contains(List<Fact<T>> facts, T thing) {
    return facts.stream().anyMatch(fact -> fact.value().id().equals(thing.id()));
  }
}
