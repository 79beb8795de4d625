package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LoggedRecord;
import stackside.model.Mode;
import stackside.model.OutputCheck;
import stackside.model.ProgramReading;
import stackside.model.ServiceEvent;
import stackside.model.Withdrawal;
import stackside.quantity.Watts;
import stackside.render.Numbers;
import stackside.render.SettingWords;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** A generator with its asset number: where it is, what it stores, what was measured on it. */
final class AssetPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(index(site)), site.unit().assets().stream().map(asset -> page(asset, site)));
  }

  private static Page index(Website site) {
    PageContext here = site.at("assets.html");
    List<Grid.GridRow> rows =
        site.unit().assets().stream()
            .map(
                asset ->
                    Grid.GridRow.of(
                        here.link(asset),
                        here.link(asset.machine().value()),
                        RichLine.of(here.choice(asset.status().value())),
                        rooms(asset, here)))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.assets")),
        "plain",
        Optional.empty(),
        List.of(
            here.section(
                "assets",
                new Grid(
                    here.say("section.assets"),
                    List.of(
                        here.say("column.asset"),
                        here.say("fact.machine"),
                        here.say("fact.status"),
                        here.say("fact.rooms")),
                    rows))));
  }

  private static RichLine rooms(Asset asset, PageContext here) {
    List<RichLine> rooms = here.unit().roomsWith(asset).stream().map(here::link).toList();
    return rooms.isEmpty() ? RichLine.of(here.say("asset.no-room")) : RichLine.joined(rooms, ", ");
  }

  private static Page page(Asset asset, Website site) {
    PageContext here = site.at("assets/" + asset.id().slug() + ".html");
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("facts", facts(asset, here)));
    sections.add(here.section("readings", readings(asset, here)));
    sections.add(here.section("output-checks", checks(asset, here)));
    sections.add(here.section("service", service(asset, here)));
    withdrawn(asset, here).ifPresent(sections::add);
    sections.add(here.mentions(asset.id()));
    return new PlainPage(
        here.frame(asset.title(), here.page(here.say("menu.assets"), "assets.html")),
        "plain",
        Optional.empty(),
        sections);
  }

  private static Facts facts(Asset asset, PageContext here) {
    return new Facts(
        List.of(
            Answers.fact(here, "machine", here.link(asset.machine().value())),
            Answers.fact(here, "software", RichLine.of(asset.software().value())),
            Answers.fact(here, "status", RichLine.of(here.choice(asset.status().value()))),
            Answers.fact(here, "since", RichLine.of(here.date(asset.since().value()))),
            Answers.fact(here, "rooms", rooms(asset, here))));
  }

  private static Part readings(Asset asset, PageContext here) {
    List<Grid.GridRow> rows =
        here.unit().programReadings().stream()
            .filter(reading -> reading.asset().value().id().equals(asset.id()))
            .map(reading -> row(reading, here))
            .toList();
    return orNone(
        rows,
        "readings",
        here,
        "column.slot",
        "column.shown-as",
        "column.socket",
        "column.pedal",
        "column.stored",
        "column.date",
        "column.initials");
  }

  private static Grid.GridRow row(ProgramReading reading, PageContext here) {
    RichLine stored =
        reading
            .mode()
            .map(
                mode ->
                    here.link(mode.value())
                        .then(TextPiece.of(setting(mode.value(), reading.level(), reading.limit()))))
            .orElse(RichLine.of(here.say("answer.unassigned")));
    return Grid.GridRow.of(
        RichLine.of(Numbers.count(reading.slot().value())),
        RichLine.of(TextPiece.shown(reading.shownAs().value())),
        here.link(reading.socket().value()),
        RichLine.of(here.choice(reading.pedal().value())),
        stored,
        RichLine.of(here.date(reading.date().value())),
        RichLine.of(reading.initials().value().text()));
  }

  private static String setting(
      Mode mode, Optional<Fact<Level>> level, Optional<Fact<Watts>> limit) {
    String set = SettingWords.of(mode, level.map(Fact::value), limit.map(Fact::value));
    return set.isEmpty() ? "" : ", " + set;
  }

  private static Part checks(Asset asset, PageContext here) {
    List<Grid.GridRow> rows =
        here.unit().outputChecks().stream()
            .filter(check -> check.asset().value().id().equals(asset.id()))
            .map(check -> row(check, here))
            .toList();
    return orNone(
        rows,
        "output-checks",
        here,
        "column.mode",
        "column.load",
        "column.measured",
        "column.method",
        "column.date",
        "column.initials");
  }

  private static Grid.GridRow row(OutputCheck check, PageContext here) {
    return Grid.GridRow.of(
        here.link(check.mode().value())
            .then(TextPiece.of(setting(check.mode().value(), check.level(), check.limit()))),
        RichLine.of(Numbers.text(check.load().value())),
        RichLine.of(Numbers.text(check.watts().value())),
        RichLine.of(check.method().value()),
        RichLine.of(here.date(check.date().value())),
        RichLine.of(check.initials().value().text()));
  }

  private static Part service(Asset asset, PageContext here) {
    List<Grid.GridRow> rows =
        here.unit().serviceEvents().stream()
            .filter(event -> event.asset().value().id().equals(asset.id()))
            .map(event -> row(event, here))
            .toList();
    return orNone(
        rows, "service", here, "column.date", "column.event", "column.software", "column.note");
  }

  private static Grid.GridRow row(ServiceEvent event, PageContext here) {
    RichLine none = RichLine.of(here.say("none"));
    return Grid.GridRow.of(
        RichLine.of(here.date(event.date().value())),
        RichLine.of(here.choice(event.event().value())),
        event.softwareAfter().map(fact -> RichLine.of(fact.value())).orElse(none),
        event.note().map(fact -> RichLine.of(fact.value())).orElse(none));
  }

  /** Wrong records stay legible, separate from those that count. */
  private static Optional<Section> withdrawn(Asset asset, PageContext here) {
    List<Grid.GridRow> rows =
        here.unit().withdrawn().stream()
            .filter(each -> each.asset().value().id().equals(asset.id()))
            .flatMap(each -> each.withdrawn().stream().map(fact -> row(each, fact.value(), here)))
            .toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            here.section(
                "withdrawn",
                orNone(
                    rows,
                    "withdrawn",
                    here,
                    "column.date",
                    "column.record",
                    "column.withdrawn",
                    "column.initials",
                    "column.reason")));
  }

  private static Grid.GridRow row(LoggedRecord record, Withdrawal withdrawal, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(here.date(record.date().value())),
        RichLine.of(here.say("record." + kind(record))),
        RichLine.of(here.date(withdrawal.date())),
        RichLine.of(withdrawal.by().text()),
        RichLine.of(withdrawal.reason()));
  }

  private static String kind(LoggedRecord record) {
    if (record instanceof ProgramReading) {
      return "program-reading";
    }
    if (record instanceof OutputCheck) {
      return "output-check";
    }
    if (record instanceof ServiceEvent) {
      return "service-event";
    }
    throw new IllegalStateException("a record without a name: " + record);
  }

  private static Part orNone(List<Grid.GridRow> rows, String section, PageContext here, String... columns) {
    return rows.isEmpty()
        ? new Part.Say(RichLine.of(here.say(section + ".none")))
        : new Grid(
            here.say("section." + section),
            Stream.of(columns).map(key -> here.say(key)).toList(),
            rows);
  }
}
