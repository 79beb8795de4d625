package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stackside.derive.neutral.ElectrodeLoad;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.derive.output.Outputs.InUse;
import stackside.derive.output.OutputRow;
import stackside.derive.output.ModeSetting;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.Quantity;
import stackside.render.Numbers;
import stackside.render.OutputPlot;
import stackside.render.OutputPlot.At;
import stackside.render.OutputPlot.Curve;
import stackside.render.SettingWords;
import stackside.render.Sheet;
import stackside.render.site.Part.Grid;

/** What a mode delivers, drawn and in tables, and how this is known. */
final class OutputParts {
  private static final int STEPS = 60;

  private OutputParts() {}

  /** Each setting in use with its curve, then all levels compared. */
  static List<Section> of(Machine machine, Mode mode, PageContext here) {
    List<Section> sections = new ArrayList<>();
    int number = 1;
    for (InUse inUse : here.site().analysis().outputs().on(machine)) {
      if (inUse.setting().mode().id().equals(mode.id())) {
        sections.add(inUse(inUse, number++, here));
      }
    }
    List<ModeOutput> open = Outputs.fullyOpen(machine, mode);
    if (open.size() > 1) {
      sections.add(here.section("all-levels", allLevels(machine, mode, open, here)));
    }
    return sections;
  }

  private static Section inUse(InUse inUse, int number, PageContext here) {
    List<Part> parts = new ArrayList<>();
    String name = name(inUse.setting());
    inUse
        .output()
        .ifPresentOrElse(
            output -> parts.addAll(output(output, name, number, here)),
            () -> parts.add(new Part.Say(RichLine.of(here.say("output.not-published")))));
    List<RichLine> asked =
        inUse.asked().stream()
            .map(Outputs.SettingUse::profile)
            .distinct()
            .map(p -> here.link(p))
            .toList();
    parts.add(new Part.Facts(List.of(new Part.Facts.Fact(here.say("output.asked-by"), asked))));
    loads(inUse, here).ifPresent(parts::add);
    return new Section("setting-" + number, here.say("output.heading", name), parts);
  }

  /** Level and limit as the display would show them. */
  static String name(ModeSetting setting) {
    return SettingWords.of(setting.mode(), setting.level(), setting.limit());
  }

  private static List<Part> output(ModeOutput output, String name, int number, PageContext here) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Say(
            RichLine.of(
                here.say(
                    output.source() == ModeOutput.Source.PUBLISHED
                        ? "output.published"
                        : "output.calculated"))));
    parts.add(new Part.Say(RichLine.of(spread(output, here))));
    OutputPlot.Plan plan =
        new OutputPlot.Plan(
            here.say("output.plot", output.setting().mode().title(), name),
            output.curve().loads(),
            List.of(new Curve(name, points(output))),
            output.fullPower(),
            here.words());
    parts.add(
        here.figure(
            "output-" + number,
            OutputPlot.of(plan, Sheet.PAGE),
            OutputPlot.of(plan, Sheet.PHONE),
            Optional.of(table(output, here))));
    return parts;
  }

  /** Whether the set power is delivered in full, and into which loads. */
  static String spread(ModeOutput output, PageContext here) {
    return output
        .fullPower()
        .map(span -> here.say("output.full-power", rounded(span.from()), rounded(span.to())))
        .orElse(here.say("output.never-full"));
  }

  static List<At> points(ModeOutput output) {
    LoadRange loads = output.curve().loads();
    TreeSet<Ohms> at = new TreeSet<>(output.tableLoads());
    output.fullPower().ifPresent(span -> at.addAll(List.of(span.from(), span.to())));
    double from = loads.from().value();
    double ratio = loads.to().value() / from;
    for (int i = 1; i < STEPS; i++) {
      at.add(new Ohms(from * StrictMath.pow(ratio, (double) i / STEPS)));
    }
    return at.stream()
        .flatMap(load -> output.curve().power(load).map(power -> new At(load, power)).stream())
        .toList();
  }

  private static Grid table(ModeOutput output, PageContext here) {
    List<String> head = new ArrayList<>(List.of(here.say("output.load"), here.say("output.power")));
    boolean pulsed = output.setting().mode().pulse().isPresent();
    if (pulsed) {
      head.add(here.say("output.averaged"));
    }
    head.add(here.say("output.current"));
    head.add(here.say("output.peak"));
    return new Grid(
            here.say("output.table", name(output.setting())),
            head,
            output.table().stream().map(row -> row(row, pulsed, here)).toList())
        .byColumn();
  }

  private static Grid.GridRow row(OutputRow row, boolean pulsed, PageContext here) {
    List<RichLine> cells = new ArrayList<>();
    cells.add(RichLine.of(rounded(row.power())));
    if (pulsed) {
      cells.add(RichLine.of(tenths(row.averaged())));
    }
    cells.add(RichLine.of(hundredths(row.current())));
    cells.add(RichLine.of(row.peakVoltage().map(OutputParts::rounded).orElse(here.say("unknown"))));
    return new Grid.GridRow(Optional.empty(), RichLine.of(rounded(row.load())), cells);
  }

  static String rounded(Quantity quantity) {
    return with(Math.rint(quantity.value()), quantity);
  }

  static String tenths(Quantity quantity) {
    return with(Math.rint(quantity.value() * 10) / 10, quantity);
  }

  private static String hundredths(Quantity quantity) {
    return with(Math.rint(quantity.value() * 100) / 100, quantity);
  }

  private static String with(double value, Quantity quantity) {
    return Numbers.number(value) + Numbers.BOUND + Numbers.unit(quantity);
  }

  private static Part allLevels(Machine machine, Mode mode, List<ModeOutput> open, PageContext here) {
    List<Curve> curves =
        open.stream().map(output -> new Curve(level(mode, output), points(output))).toList();
    OutputPlot.Plan plan =
        new OutputPlot.Plan(
            here.say("output.all-levels", mode.title()),
            machine.loadRange().value(),
            curves,
            Optional.empty(),
            here.words());
    List<Ohms> loads = open.get(0).tableLoads();
    List<String> head = new ArrayList<>();
    head.add(here.say("column.setting"));
    loads.forEach(load -> head.add(rounded(load)));
    return here.figure(
        "all-levels",
        OutputPlot.of(plan, Sheet.PAGE),
        OutputPlot.of(plan, Sheet.PHONE),
        Optional.of(
            new Grid(
                    here.say("output.all-levels", mode.title()),
                    head,
                    open.stream().map(output -> levelRow(mode, output, loads, here)).toList())
                .byColumn()));
  }

  private static Grid.GridRow levelRow(Mode mode, ModeOutput output, List<Ohms> loads, PageContext here) {
    return new Grid.GridRow(
        Optional.empty(),
        RichLine.of(level(mode, output)),
        loads.stream()
            .map(
                load ->
                    RichLine.of(
                        output
                            .curve()
                            .power(load)
                            .map(OutputParts::rounded)
                            .orElse(here.say("output.not-published-here"))))
            .toList());
  }

  private static String level(Mode mode, ModeOutput output) {
    return output
        .setting()
        .level()
        .map(level -> SettingWords.level(mode, level))
        .orElse(mode.title());
  }

  /**
   * What the setting demands of neutral electrodes. This is about the electrode alone, never
   * tissue.
   */
  private static Optional<Part> loads(InUse inUse, PageContext here) {
    List<Grid.GridRow> rows = new ArrayList<>();
    for (ElectrodeLoad load : here.site().analysis().electrodeLoads()) {
      boolean asked =
          inUse.asked().stream().anyMatch(each -> each.profile().id().equals(load.profile().id()));
      if (asked && ModeSetting.of(load.pedal()).equals(inUse.setting())) {
        Grid.GridRow row = row(load, here);
        if (!rows.contains(row)) {
          rows.add(row);
        }
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Grid(
                here.say("output.electrode-table", name(inUse.setting())),
                List.of(
                    here.say("output.electrode"),
                    here.say("output.electrode-current"),
                    here.say("output.through-minute"),
                    here.say("output.electrode-limit"),
                    here.say("output.seconds")),
                rows));
  }

  private static Grid.GridRow row(ElectrodeLoad load, PageContext here) {
    return Grid.GridRow.of(
        here.link(load.electrode()),
        RichLine.of(hundredths(load.averaged())),
        RichLine.of(tenths(load.throughMinute())),
        RichLine.of(load.limit().map(Numbers::text).orElse(here.say("output.not-declared"))),
        RichLine.of(
            load.inAnyMinute()
                .map(seconds -> with(Math.floor(seconds.value()), seconds))
                .orElse(here.say("output.not-declared"))));
  }
}
