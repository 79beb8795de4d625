package stackside.derive.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.energy.Duty;
import stackside.energy.LimitedOutput;
import stackside.energy.LoadSpan;
import stackside.energy.OutputCurve;
import stackside.energy.OutputLimits;
import stackside.energy.TabulatedOutput;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.PublishedOutput;
import stackside.model.PulseTiming;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;

/**
 * What a machine delivers at one setting; within the burst if the mode is pulsed.
 *
 * @param curve over the loads that the machine's publisher states
 * @param duty the share of time in which current flows
 */
public record ModeOutput(
    Machine machine, ModeSetting setting, OutputCurve curve, Source source, Duty duty) {

  /** The loads used in the standard's diagrams (IEC 60601-2-2, from memory). */
  private static final List<Integer> USUAL_LOADS = List.of(50, 100, 200, 500, 1000, 2000);

  private static final Ohms DRIED = new Ohms(1000);

  /** The origin of a curve. */
  public enum Source {
    /** Points that the machine's publisher states for exactly this setting. */
    PUBLISHED,
    /** Calculated from the mode's limits. */
    CALCULATED
  }

  /**
   * The output at a setting. Absent for argon, where the gas path decides rather than the load, and
   * if neither points nor enough limits are published.
   */
  public static Optional<ModeOutput> of(Machine machine, ModeSetting setting) {
    Mode mode = setting.mode();
    if (mode.kind().value() == EnergyKind.ARGON) {
      return Optional.empty();
    }
    Duty duty =
        mode.pulse()
            .filter(PulseTiming::isPulse)
            .map(pulse -> Duty.of(pulse.on().value(), pulse.every().value()))
            .orElse(Duty.always());
    LoadRange loads = machine.loadRange().value();
    return published(setting, loads)
        .map(curve -> new ModeOutput(machine, setting, curve, Source.PUBLISHED, duty))
        .or(
            () ->
                limits(setting)
                    .map(
                        limits ->
                            new ModeOutput(
                                machine,
                                setting,
                                new LimitedOutput(loads, limits),
                                Source.CALCULATED,
                                duty)));
  }

  private static Optional<OutputCurve> published(ModeSetting setting, LoadRange loads) {
    return setting.mode().published().stream()
        .filter(published -> isFor(published, setting))
        .map(published -> points(published, loads))
        .filter(points -> points.size() > 1)
        .map(points -> (OutputCurve) new TabulatedOutput(points, setting.crest(), setting.peak()))
        .findFirst();
  }

  private static boolean isFor(PublishedOutput published, ModeSetting setting) {
    return published.level().map(Fact::value).equals(setting.level())
        && published.limit().map(Fact::value).equals(setting.limit());
  }

  /** Points by rising load, whatever order they are written in; only the first for each load. */
  private static List<TabulatedOutput.Point> points(PublishedOutput published, LoadRange loads) {
    TreeMap<Ohms, Watts> points = new TreeMap<>();
    published.points().stream()
        .map(Fact::value)
        .filter(point -> loads.holds(point.load()))
        .forEach(point -> points.putIfAbsent(point.load(), point.power()));
    return points.entrySet().stream()
        .map(point -> new TabulatedOutput.Point(point.getKey(), point.getValue()))
        .toList();
  }

  private static Optional<OutputLimits> limits(ModeSetting setting) {
    Optional<Watts> power = setting.dialled();
    var current = setting.currentLimit();
    if (power.isEmpty() && current.isEmpty()) {
      return Optional.empty();
    }
    return setting
        .peak()
        .flatMap(
            peak -> setting.crest().map(crest -> new OutputLimits(current, power, peak, crest)));
  }

  /** The loads into which the set power flows in full; absent if there are none. */
  public Optional<LoadSpan> fullPower() {
    return setting.dialled().flatMap(curve::reaching);
  }

  /** Whether no published load receives the full set power. */
  public boolean neverReachesLimit() {
    return setting.dialled().isPresent() && fullPower().isEmpty();
  }

  /** The power that is left once tissue has dried: the power into 1,000 ohm. */
  public Optional<Watts> dried() {
    return curve.power(DRIED);
  }

  /**
   * The power into a load averaged over the whole cycle; the plain power if the mode is not pulsed.
   */
  public Optional<Watts> averaged(Ohms load) {
    return curve.power(load).map(duty::averaged);
  }

  /** The loads listed in tables: the usual ones and both ends of the range. */
  public List<Ohms> tableLoads() {
    TreeSet<Ohms> loads = new TreeSet<>();
    USUAL_LOADS.stream().map(Ohms::new).filter(curve.loads()::holds).forEach(loads::add);
    loads.add(curve.loads().from());
    loads.add(curve.loads().to());
    return List.copyOf(loads);
  }

  /** One row for each of {@link #tableLoads}. */
  public List<OutputRow> table() {
    List<OutputRow> rows = new ArrayList<>();
    tableLoads().forEach(load -> at(load).ifPresent(rows::add));
    return rows;
  }

  /** What is delivered into a load; absent if that is not published. */
  public Optional<OutputRow> at(Ohms load) {
    return curve
        .power(load)
        .map(
            power ->
                new OutputRow(
                    load,
                    power,
                    duty.averaged(power),
                    curve.current(load).orElseThrow(),
                    curve.peakVoltage(load)));
  }
}
