package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.LevelScale;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Response;
import stackside.model.Term;
import stackside.render.Links;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** A generator model: how it selects a socket, its modes, and how it responds to conditions. */
final class MachinePages implements Pages {
  private static final double THUMBNAIL = 44;

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(index(site)),
        site.unit().machines().stream()
            .flatMap(machine -> Stream.of(page(machine, site), socketMap(machine, site))));
  }

  private static Page index(Website site) {
    PageContext here = site.at("machines.html");
    List<Part.Picks.Pick> picks =
        site.unit().machines().stream().map(machine -> pick(machine, here)).toList();
    return new PlainPage(
        here.frame(here.say("menu.machines")),
        "plain",
        Optional.empty(),
        List.of(here.section("machines", new Part.Picks(picks))));
  }

  private static Part.Picks.Pick pick(Machine machine, PageContext here) {
    String selects = here.say("selects." + machine.selectsSocket().value().word());
    Html drawing =
        new Html(
            SvgWriter.svg(
                SocketMap.thumbnail(here.site().panel(machine), THUMBNAIL),
                "panel-" + machine.id().slug()));
    return new Part.Picks.Pick(
        machine.title(), Links.to(machine.id()).from(here.path()), selects, Optional.of(drawing));
  }

  private static Page page(Machine machine, Website site) {
    PageContext here = site.at("machines/" + machine.id().slug() + ".html");
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("facts", facts(machine, here)));
    sections.add(here.section("modes", modes(machine, here)));
    sections.add(here.section("machine-answers", answers(machine, here)));
    sections.add(here.section("used", used(machine, here)));
    sections.add(here.mentions(machine.id()));
    return new PlainPage(
        here.frame(machine.title(), here.page(here.say("menu.machines"), "machines.html"))
            .due(here.review(machine.id())),
        "machine",
        Optional.of(here.page(here.say("machine.socket-map"), socketMapPath(machine))),
        sections);
  }

  private static String socketMapPath(Machine machine) {
    return "socket-maps/" + machine.id().slug() + ".html";
  }

  private static Facts facts(Machine machine, PageContext here) {
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(
        Answers.fact(
            here,
            "selects",
            RichLine.of(here.say("selects." + machine.selectsSocket().value().word()))));
    machine
        .atPowerOn()
        .ifPresent(
            socket -> facts.add(Answers.fact(here, "at-power-on", here.link(socket.value()))));
    facts.add(
        Answers.fact(
            here, "monitor", RichLine.of(here.say("monitor." + machine.monitor().value().word()))));
    facts.add(
        Answers.fact(
            here,
            "software",
            RichLine.of(
                machine.software().stream().map(Fact::value).collect(Collectors.joining(", ")))));
    facts.add(
        Answers.fact(here, "load-range", RichLine.of(here.spans().text(machine.loadRange().value()))));
    machine
        .programs()
        .ifPresent(
            range ->
                facts.add(
                    Answers.fact(here, "programs", RichLine.of(here.spans().text(range.value())))));
    facts.add(new Facts.Fact(here.term(Term.FOOT_SWITCH), here.links(machine.footSwitches())));
    facts.add(
        Answers.fact(
            here,
            "lamps",
            RichLine.of(
                machine.lamps().stream()
                    .map(lamp -> lamp.name().value())
                    .collect(Collectors.joining(", ")))));
    return new Facts(facts.stream().filter(fact -> !fact.values().isEmpty()).toList());
  }

  private static Grid modes(Machine machine, PageContext here) {
    return new Grid(
        here.say("section.modes"),
        List.of(
            here.say("column.mode"),
            here.say("column.pedal"),
            here.say("column.current"),
            here.say("column.levels"),
            here.say("column.limits")),
        machine.modes().stream().map(mode -> row(mode, here)).toList());
  }

  private static Grid.GridRow row(Mode mode, PageContext here) {
    return Grid.GridRow.of(
        here.link(mode),
        RichLine.of(here.choice(mode.pedal().value())),
        RichLine.of(here.choice(mode.kind().value()) + ", " + here.choice(mode.current().value())),
        RichLine.of(mode.level().map(MachinePages::levels).orElse(here.say("mode.no-level"))),
        RichLine.of(
            mode.powerLimit()
                .map(range -> here.spans().text(range.value()))
                .orElse(here.say("mode.no-limit"))));
  }

  static String levels(LevelScale scale) {
    return scale.name().value()
        + " "
        + scale.levels().stream().map(level -> level.text()).collect(Collectors.joining(", "));
  }

  private static Grid answers(Machine machine, PageContext here) {
    return new Grid(
        here.say("section.machine-answers"),
        List.of(
            here.say("column.condition"),
            here.say("column.tone"),
            here.say("column.lamps"),
            here.say("column.display"),
            here.say("column.output"),
            here.say("column.evidence")),
        machine.answers().keySet().stream()
            .map(met -> row(machine, met, machine.answer(met).orElseThrow(), here))
            .toList());
  }

  private static Grid.GridRow row(Machine machine, Condition condition, Response response, PageContext here) {
    RichLine unknown = RichLine.of(here.say("unknown"));
    FrontWords front = new FrontWords(machine, condition.unsaid(), here);
    List<String> lamps = front.lamps(FrontWords.colours(response));
    return Grid.GridRow.of(
        RichLine.of(here.say("condition." + condition.word())),
        response.tone().map(tone -> RichLine.of(here.choice(tone.value()))).orElse(unknown),
        RichLine.of(lamps.isEmpty() ? here.say("none") : String.join(", ", lamps)),
        response
            .display()
            .map(words -> RichLine.of(TextPiece.shown(words.value())))
            .orElse(RichLine.of(front.unsaid())),
        response.output().map(seen -> RichLine.of(here.choice(seen.value()))).orElse(unknown),
        evidence(response.evidence().value(), here));
  }

  private static RichLine evidence(Evidence evidence, PageContext here) {
    RichLine basis = RichLine.of(here.choice(evidence.basis()));
    return evidence
        .observation()
        .map(
            seen ->
                basis
                    .then(TextPiece.of(" " + here.date(seen.observed().value()) + ", "))
                    .then(here.link(seen.asset().value()))
                    .then(TextPiece.of(", " + here.say("asset.software", seen.software().value()))))
        .orElse(basis);
  }

  private static Part used(Machine machine, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    here.unit().roomsWith(machine).forEach(room -> lines.add(here.linkWithKind(room.id())));
    here.unit().checklistsFor(machine).forEach(list -> lines.add(here.linkWithKind(list.id())));
    here.unit().drillsFor(machine).forEach(drill -> lines.add(here.linkWithKind(drill.id())));
    return lines.isEmpty()
        ? new Part.Say(RichLine.of(here.say("mentions.none")))
        : new Part.Lines(lines);
  }

  private static Page socketMap(Machine machine, Website site) {
    PageContext here = site.at(socketMapPath(machine));
    List<Section> sections = new ArrayList<>();
    sections.add(
        here.section(
            "front-panel",
            SocketParts.panel(site.panel(machine), "panel-" + machine.id().slug(), here)));
    machine.sockets().forEach(socket -> sections.add(SocketSections.of(machine, socket, here)));
    return new PlainPage(
        here.frame(
            here.say("socket-map.title", machine.title()),
            here.page(here.say("menu.machines"), "machines.html"),
            here.link(machine)),
        "machine",
        Optional.of(RichLine.of(here.say("socket-map.lead"))),
        sections);
  }
}
