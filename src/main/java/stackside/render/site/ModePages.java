package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Level;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** An output mode of a machine: what it is for and what its levels mean. */
final class ModePages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return site.unit().machines().stream()
        .flatMap(machine -> machine.modes().stream().map(mode -> page(machine, mode, site)));
  }

  private static Page page(Machine machine, Mode mode, Website site) {
    PageContext here = site.at(Links.to(mode.id()).page());
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("facts", facts(machine, mode, here)));
    levels(mode, here).ifPresent(grid -> sections.add(here.section("levels", grid)));
    sections.addAll(OutputParts.of(machine, mode, here));
    sections.add(here.mentions(mode.id()));
    return new PlainPage(
        here.frame(
            here.say("mode.title", mode.title(), machine.title()),
            here.page(here.say("menu.machines"), "machines.html"),
            here.link(machine)),
        "machine",
        Optional.of(RichLine.of(here.say("mode.lead"))),
        sections);
  }

  private static Facts facts(Machine machine, Mode mode, PageContext here) {
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(Answers.fact(here, "machine", here.link(machine)));
    facts.add(Answers.fact(here, "pedal", RichLine.of(here.choice(mode.pedal().value()))));
    facts.add(Answers.fact(here, "current", RichLine.of(here.choice(mode.current().value()))));
    facts.add(Answers.fact(here, "energy-kind", RichLine.of(here.choice(mode.kind().value()))));
    facts.add(Answers.fact(here, "waveform", RichLine.of(here.choice(mode.waveform().value()))));
    mode.powerLimit()
        .ifPresent(
            range ->
                facts.add(
                    Answers.fact(here, "power-limit", RichLine.of(here.spans().text(range.value())))));
    mode.ratedLoad()
        .ifPresent(
            load ->
                facts.add(Answers.fact(here, "rated-load", RichLine.of(Numbers.text(load.value())))));
    mode.pulse()
        .ifPresent(
            pulse ->
                facts.add(
                    Answers.fact(
                        here,
                        "pulse",
                        RichLine.of(
                            here.say(
                                "mode.pulse",
                                Numbers.brief(pulse.on().value()),
                                Numbers.brief(pulse.every().value()))))));
    return new Facts(facts);
  }

  private static Optional<Grid> levels(Mode mode, PageContext here) {
    if (mode.peakVoltage().isEmpty() && mode.crestFactor().isEmpty()) {
      return Optional.empty();
    }
    List<Optional<Level>> levels = new ArrayList<>();
    mode.level()
        .ifPresentOrElse(
            scale -> scale.levels().forEach(level -> levels.add(Optional.of(level))),
            () -> levels.add(Optional.empty()));
    return Optional.of(
        new Grid(
            here.say("section.levels"),
            List.of(
                mode.level().map(scale -> scale.name().value()).orElse(here.say("column.setting")),
                here.say("column.peak-voltage"),
                here.say("column.crest-factor")),
            levels.stream().map(level -> row(mode, level, here)).toList()));
  }

  private static Grid.GridRow row(Mode mode, Optional<Level> level, PageContext here) {
    RichLine unknown = RichLine.of(here.say("unknown"));
    return Grid.GridRow.of(
        RichLine.of(level.map(Level::text).orElse(here.say("mode.any-setting"))),
        mode.peakVoltage()
            .flatMap(volts -> volts.at(level))
            .map(volts -> RichLine.of(Numbers.text(volts.value())))
            .orElse(unknown),
        mode.crestFactor()
            .flatMap(factor -> factor.at(level))
            .map(factor -> RichLine.of(factor.value().text()))
            .orElse(unknown));
  }
}
