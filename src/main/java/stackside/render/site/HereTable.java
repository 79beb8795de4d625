package stackside.render.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stackside.derive.figure.FigureName;
import stackside.derive.standing.OutputCheckStanding;
import stackside.model.ByLevel;
import stackside.model.CrestFactor;
import stackside.model.Electrode;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.Thing;
import stackside.model.Wall;
import stackside.quantity.PeakVolts;
import stackside.render.Numbers;
import stackside.render.site.Part.Grid;

/**
 * What the unit itself has on the subject of a chapter, as a table that changes with its content.
 */
final class HereTable {
  private final FigureName name;
  private final PageContext here;

  private HereTable(FigureName name, PageContext here) {
    this.name = name;
    this.here = here;
  }

  static Part of(FigureName name, PageContext here) {
    HereTable table = new HereTable(name, here);
    List<Grid.GridRow> rows = table.rows();
    return rows.isEmpty()
        ? new Part.Say(RichLine.of(here.say("here.none")))
        : new Grid(here.say("here." + name.word()), table.columns().map(here::say).toList(), rows);
  }

  private Stream<String> columns() {
    return switch (name) {
      case SOCKETS_HERE -> Stream.of("kind.machine", "figure.panels.selects", "fact.monitor");
      case PLATES_HERE -> Stream.of("kind.room", "kind.machine", "fact.monitor", "here.plates");
      case MODES_HERE ->
          Stream.of(
              "kind.mode",
              "kind.machine",
              "column.current",
              "column.crest-factor",
              "column.peak-voltage");
      case RATINGS_HERE -> Stream.of("kind.instrument", "here.rated");
      case ARGON_HERE, BIPOLAR_HERE -> Stream.of("kind.mode", "kind.machine", "here.rooms");
      case WALLS_HERE -> Stream.of("here.wall", "column.sites");
      case LESIONS_HERE -> Stream.of("kind.lesion", "here.rooms");
      case CHECKLISTS_HERE -> Stream.of("column.checklist", "column.when");
      case DRILLS_HERE -> Stream.of("column.drill", "column.sign");
      case OUTPUT_CHECKS_HERE -> Stream.of("column.asset", "kind.machine", "column.due");
      case FOOT_SWITCHES_HERE -> Stream.of("kind.room", "kind.machine", "here.foot-switches");
      default -> throw new IllegalStateException("no table: " + name);
    };
  }

  private List<Grid.GridRow> rows() {
    return switch (name) {
      case SOCKETS_HERE -> each(here.unit().machines(), this::sockets);
      case PLATES_HERE -> each(here.unit().rooms(), this::plates);
      case MODES_HERE -> each(here.unit().machines(), this::modes);
      case RATINGS_HERE ->
          each(
              here.unit().instruments(),
              instrument ->
                  Stream.of(
                      Grid.GridRow.of(
                          here.link(instrument),
                          RichLine.of(Numbers.text(instrument.ratedVoltage().value())))));
      case ARGON_HERE -> each(here.unit().machines(), machine -> kind(machine, EnergyKind.ARGON));
      case BIPOLAR_HERE ->
          each(here.unit().machines(), machine -> kind(machine, EnergyKind.BIPOLAR));
      case WALLS_HERE -> each(List.of(Wall.values()), this::wall);
      case LESIONS_HERE -> lesions();
      case CHECKLISTS_HERE ->
          each(
              here.unit().checklists(),
              list ->
                  Stream.of(
                      Grid.GridRow.of(
                          here.link(list), RichLine.of(here.choice(list.kind().value())))));
      case DRILLS_HERE ->
          each(
              here.unit().drills(),
              drill ->
                  Stream.of(
                      Grid.GridRow.of(
                          here.link(drill), RichLine.of(DrillPages.sign(drill, here)))));
      case OUTPUT_CHECKS_HERE -> outputChecks();
      case FOOT_SWITCHES_HERE -> each(here.unit().rooms(), this::footSwitches);
      default -> throw new IllegalStateException("no table: " + name);
    };
  }

  private static <T> List<Grid.GridRow> each(
      List<T> things, Function<T, Stream<Grid.GridRow>> rows) {
    return things.stream().flatMap(rows).toList();
  }

  private RichLine listed(List<? extends Thing> things) {
    return things.isEmpty()
        ? RichLine.of(here.say("none"))
        : RichLine.joined(things.stream().map(thing -> here.link(thing)).toList(), ", ");
  }

  private RichLine monitor(Machine machine) {
    return RichLine.of(here.say("monitor." + machine.monitor().value().word()));
  }

  private Stream<Grid.GridRow> sockets(Machine machine) {
    return Stream.of(
        Grid.GridRow.of(
            here.link(machine),
            RichLine.of(here.say("selects." + machine.selectsSocket().value().word())),
            monitor(machine)));
  }

  private Stream<Grid.GridRow> plates(Room room) {
    List<Electrode> kept = room.keeps().neutralElectrodes().stream().map(Fact::value).toList();
    RichLine plates =
        kept.isEmpty()
            ? RichLine.of(here.say("none"))
            : RichLine.joined(
                kept.stream()
                    .map(
                        plate ->
                            here.link(plate)
                                .then(
                                    TextPiece.of(
                                        ", " + here.spans().text(plate.patients().value()))))
                    .toList(),
                "; ");
    return here.unit().machinesIn(room).stream()
        .map(
            machine ->
                Grid.GridRow.of(here.link(room), here.link(machine), monitor(machine), plates));
  }

  private Stream<Grid.GridRow> modes(Machine machine) {
    return machine.modes().stream()
        .map(
            mode ->
                Grid.GridRow.of(
                    here.link(mode),
                    here.link(machine),
                    RichLine.of(here.choice(mode.current().value())),
                    RichLine.of(span(mode.crestFactor().map(HereTable::facts), CrestFactor::text)),
                    RichLine.of(span(mode.peakVoltage().map(HereTable::facts), HereTable::volts))));
  }

  private static String volts(PeakVolts volts) {
    return Numbers.text(volts);
  }

  private static <T> List<T> facts(ByLevel<T> values) {
    return Stream.concat(values.all().stream(), values.each().values().stream())
        .map(Fact::value)
        .toList();
  }

  /** The first and the last of some values, as written from the lowest level to the highest. */
  private <T> String span(Optional<List<T>> values, Function<T, String> text) {
    List<T> all = values.orElse(List.of());
    if (all.isEmpty()) {
      return here.say("unknown");
    }
    String first = text.apply(all.get(0));
    String last = text.apply(all.get(all.size() - 1));
    return first.equals(last) ? first : here.say("figure.waves.peaks", first, last);
  }

  private Stream<Grid.GridRow> kind(Machine machine, EnergyKind kind) {
    Predicate<Mode> wanted = mode -> mode.kind().value() == kind;
    return machine.modes().stream()
        .filter(wanted)
        .map(
            mode ->
                Grid.GridRow.of(
                    here.link(mode), here.link(machine), listed(here.unit().roomsWith(machine))));
  }

  private Stream<Grid.GridRow> wall(Wall wall) {
    List<Site> sites =
        here.unit().sites().stream().filter(site -> site.wall().value() == wall).toList();
    return sites.isEmpty()
        ? Stream.empty()
        : Stream.of(Grid.GridRow.of(RichLine.of(here.say("wall." + wall.word())), listed(sites)));
  }

  private List<Grid.GridRow> lesions() {
    return here.unit().lesions().stream()
        .map(
            lesion ->
                Grid.GridRow.of(
                    here.link(lesion),
                    listed(
                        here.unit().rooms().stream()
                            .filter(
                                room ->
                                    room.offers().stream()
                                        .flatMap(offer -> offer.lesions().stream())
                                        .anyMatch(each -> each.value().id().equals(lesion.id())))
                            .toList())))
        .toList();
  }

  /** The earliest day by which a mode of each generator must be measured again. */
  private List<Grid.GridRow> outputChecks() {
    List<Grid.GridRow> rows = new ArrayList<>();
    List<OutputCheckStanding> all = here.site().standing().outputChecks();
    here.unit()
        .assets()
        .forEach(
            asset ->
                rows.add(
                    Grid.GridRow.of(
                        here.link(asset),
                        here.link(asset.machine().value()),
                        RichLine.of(
                            all.stream()
                                .filter(each -> each.asset().id().equals(asset.id()))
                                .flatMap(each -> each.dueBy().stream())
                                .min(Comparator.naturalOrder())
                                .map(here::date)
                                .orElse(here.say("here.not-measured"))))));
    return rows;
  }

  private Stream<Grid.GridRow> footSwitches(Room room) {
    return here.unit().machinesIn(room).stream()
        .map(
            machine ->
                Grid.GridRow.of(
                    here.link(room),
                    here.link(machine),
                    listed(here.unit().footSwitchesFor(room, machine))));
  }
}
