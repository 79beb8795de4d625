package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.derive.output.Outputs.InUse;
import stackside.derive.output.Together;
import stackside.energy.Lead;
import stackside.energy.LoadSpan;
import stackside.model.CurrentType;
import stackside.model.Mode;
import stackside.model.Profile;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;
import stackside.render.Numbers;
import stackside.render.OutputPlot;
import stackside.render.OutputPlot.Curve;
import stackside.render.Sheet;
import stackside.render.site.Part.Grid;

/**
 * What the modes of one machine deliver into its published loads, at settings used by the unit's
 * answers: drawn, as a table, and in words with the same numbers.
 */
final class PowerFigure {
  private static final double HELD = 0.9;
  private static final double GIVEN_WAY = 0.5;
  private static final Set<CurrentType> CUTS =
      Set.of(CurrentType.CUT, CurrentType.BLENDED_CUT, CurrentType.PULSED_CUT);

  private final List<InUse> settings;
  private final PageContext here;

  private PowerFigure(List<InUse> settings, PageContext here) {
    this.settings = settings;
    this.here = here;
  }

  static List<Part> parts(List<Mode> modes, String id, PageContext here) {
    List<InUse> settings = Together.of(here.site().analysis().outputs(), modes).settings();
    boolean oneMachine = settings.stream().map(each -> each.machine().id()).distinct().count() == 1;
    return oneMachine ? new PowerFigure(settings, here).parts(id) : List.of();
  }

  private List<Part> parts(String id) {
    return List.of(
        drawn(id),
        facts(),
        table(),
        new Part.Lines(said()),
        new Part.Say(
            RichLine.of(
                here.say(
                    "figure.power.beyond",
                    OutputParts.rounded(loads().from()),
                    OutputParts.rounded(loads().to())))),
        new Part.Say(RichLine.of(here.say("figure.power.limits"))));
  }

  private Part drawn(String id) {
    OutputPlot.Plan plan =
        new OutputPlot.Plan(
            here.say("figure.power.title", settings.get(0).machine().title()),
            loads(),
            settings.stream().map(PowerFigure::curve).toList(),
            Optional.empty(),
            here.words());
    return here.figure(
        id, OutputPlot.of(plan, Sheet.PAGE), OutputPlot.of(plan, Sheet.PHONE), Optional.empty());
  }

  private static Curve curve(InUse use) {
    return new Curve(
        use.setting().mode().title(), OutputParts.points(output(use)), output(use).fullPower());
  }

  private LoadRange loads() {
    return settings.get(0).machine().loadRange().value();
  }

  private Grid table() {
    List<String> head = new ArrayList<>(List.of(here.say("output.load")));
    for (InUse use : settings) {
      head.add(use.setting().mode().title());
      if (pulsed(use)) {
        head.add(here.say("figure.power.averaged", use.setting().mode().title()));
      }
    }
    TreeSet<Ohms> loads = new TreeSet<>();
    settings.forEach(use -> loads.addAll(output(use).tableLoads()));
    List<Grid.GridRow> rows = new ArrayList<>();
    loads.forEach(load -> rows.add(row(load)));
    return new Grid(here.say("figure.power.title", settings.get(0).machine().title()), head, rows)
        .byColumn();
  }

  private Grid.GridRow row(Ohms load) {
    List<RichLine> cells = new ArrayList<>();
    for (InUse use : settings) {
      cells.add(cell(output(use).curve().power(load).map(OutputParts::rounded)));
      if (pulsed(use)) {
        cells.add(cell(output(use).averaged(load).map(OutputParts::tenths)));
      }
    }
    return new Grid.GridRow(Optional.empty(), RichLine.of(OutputParts.rounded(load)), cells);
  }

  private RichLine cell(Optional<String> power) {
    return RichLine.of(power.orElse(here.say("output.not-published-here")));
  }

  private static boolean pulsed(InUse use) {
    return use.setting().mode().pulse().isPresent();
  }

  /**
   * A table below the drawing: for each mode its setting, who uses it, and where its power is
   * delivered.
   */
  private Grid facts() {
    List<String> head = new ArrayList<>(List.of(here.say("figure.power.drawn")));
    settings.forEach(use -> head.add(title(use)));
    return new Grid(
            here.say("figure.power.settings"),
            head,
            List.of(
                fact("column.setting", use -> RichLine.of(OutputParts.name(use.setting()))),
                fact("output.asked-by", this::asked),
                fact("figure.power.known", use -> RichLine.of(here.say(known(use)))),
                fact("figure.power.full", use -> RichLine.of(span(output(use).fullPower()))),
                fact("figure.power.most", use -> RichLine.of(span(mostly(use)))),
                fact(
                    "figure.power.dry",
                    use -> cell(output(use).dried().map(OutputParts::rounded)))))
        .byColumn();
  }

  private Grid.GridRow fact(String key, Function<InUse, RichLine> value) {
    return new Grid.GridRow(
        Optional.empty(), RichLine.of(here.say(key)), settings.stream().map(value).toList());
  }

  private static String known(InUse use) {
    return output(use).source() == ModeOutput.Source.PUBLISHED
        ? "figure.power.published"
        : "figure.power.calculated";
  }

  private RichLine asked(InUse use) {
    List<Profile> profiles = use.asked().stream().map(Outputs.SettingUse::profile).distinct().toList();
    RichLine first = here.link(profiles.get(0));
    return profiles.size() == 1
        ? first
        : first.then(TextPiece.of(here.say("figure.power.others", profiles.size() - 1)));
  }

  private String span(Optional<LoadSpan> loads) {
    if (loads.isEmpty()) {
      return here.say("figure.power.nowhere");
    }
    String from = OutputParts.rounded(loads.get().from());
    String to = OutputParts.rounded(loads.get().to());
    return from.equals(to) ? from : here.say("figure.power.span", from, to);
  }

  private static Optional<LoadSpan> mostly(InUse use) {
    return use.setting()
        .dialled()
        .flatMap(power -> output(use).curve().reaching(new Watts(HELD * power.value())));
  }

  private List<RichLine> said() {
    List<RichLine> lines = new ArrayList<>();
    for (InUse soft : settings) {
      for (InUse cut : settings) {
        if (soft.setting().mode().current().value() == CurrentType.SOFT_COAGULATION
            && CUTS.contains(cut.setting().mode().current().value())) {
          drying(soft, cut).ifPresent(words -> lines.add(RichLine.of(words)));
          lines.add(RichLine.of(lead(soft, cut)));
        }
      }
    }
    settings.forEach(use -> burst(use).ifPresent(words -> lines.add(RichLine.of(words))));
    return lines;
  }

  /** A statement that the soft mode gives way where the cut holds; absent if that is not so. */
  private Optional<String> drying(InUse soft, InUse cut) {
    double softShare = share(soft);
    double cutShare = share(cut);
    return softShare < GIVEN_WAY && cutShare >= HELD
        ? Optional.of(
            here.say(
                "figure.power.drying",
                title(soft),
                dry(soft),
                dialled(soft),
                title(cut),
                dry(cut),
                dialled(cut)))
        : Optional.empty();
  }

  /** The share of the set power that is left in dry tissue; NaN if unknown. */
  private static double share(InUse use) {
    return output(use)
        .dried()
        .flatMap(left -> use.setting().dialled().map(set -> left.value() / set.value()))
        .orElse(Double.NaN);
  }

  private static String dry(InUse use) {
    return output(use).dried().map(OutputParts::rounded).orElseThrow();
  }

  private static String dialled(InUse use) {
    return use.setting().dialled().map(OutputParts::rounded).orElseThrow();
  }

  private static String title(InUse use) {
    return use.setting().mode().title();
  }

  private Optional<String> burst(InUse use) {
    ModeOutput output = output(use);
    return use.setting()
        .mode()
        .pulse()
        .map(
            pulse ->
                here.say(
                    "figure.power.burst",
                    title(use),
                    Numbers.brief(pulse.on().value()),
                    Numbers.brief(pulse.every().value()),
                    OutputParts.tenths(output.duty().averaged(output.curve().highest()))));
  }

  /** The load below which the soft mode delivers more than the cut. */
  private String lead(InUse soft, InUse cut) {
    String one = title(soft);
    String other = title(cut);
    Optional<Ohms> upTo = Lead.of(output(soft).curve(), output(cut).curve());
    if (upTo.isEmpty()) {
      return here.say("figure.power.no-lead", one, other);
    }
    return upTo.get().value() >= loads().to().value()
        ? here.say("figure.power.lead-throughout", one, other)
        : here.say("figure.power.lead", one, other, OutputParts.rounded(upTo.get()));
  }

  private static ModeOutput output(InUse use) {
    return use.output().orElseThrow();
  }
}
