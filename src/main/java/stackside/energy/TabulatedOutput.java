package stackside.energy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

/**
 * A curve through published points, joined by straight lines. It therefore stays between
 * neighbouring points and never rises where they fall. Nothing is published below the first point
 * or above the last.
 *
 * @param points by rising load, at least two
 * @param crest absent where it is not published
 * @param peak the mode's highest peak voltage; no load sees more
 */
public record TabulatedOutput(List<Point> points, Optional<Crest> crest, Optional<PeakVolts> peak)
    implements OutputCurve {

  /** A published power into a load. */
  public record Point(Ohms load, Watts power) {}

  public TabulatedOutput {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a curve needs two points, not " + points.size());
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i - 1).load().value() >= points.get(i).load().value()) {
        throw new IllegalArgumentException("the loads do not rise: " + points);
      }
    }
  }

  @Override
  public LoadRange loads() {
    return new LoadRange(points.get(0).load(), points.get(points.size() - 1).load());
  }

  @Override
  public Optional<Watts> power(Ohms load) {
    for (int i = 1; i < points.size(); i++) {
      if (span(i).holds(load)) {
        return Optional.of(between(points.get(i - 1), points.get(i), load));
      }
    }
    return Optional.empty();
  }

  private LoadSpan span(int i) {
    return new LoadSpan(points.get(i - 1).load(), points.get(i).load());
  }

  private static Watts between(Point low, Point high, Ohms load) {
    double share = (load.value() - low.load().value()) / (high.load().value() - low.load().value());
    return new Watts((1 - share) * low.power().value() + share * high.power().value());
  }

  @Override
  public Optional<PeakVolts> peakVoltage(Ohms load) {
    return crest.flatMap(
        known -> power(load).map(power -> capped(known.peak(RmsVolts.across(load, power)))));
  }

  private PeakVolts capped(PeakVolts volts) {
    return peak.filter(most -> most.compareTo(volts) < 0).orElse(volts);
  }

  @Override
  public Watts highest() {
    return points.stream().map(Point::power).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Only published points are tested, so that a rounded table does not claim more than it says. */
  @Override
  public Optional<LoadSpan> reaching(Watts power) {
    List<Ohms> loads =
        points.stream()
            .filter(point -> point.power().compareTo(power) >= 0)
            .map(Point::load)
            .toList();
    return loads.isEmpty()
        ? Optional.empty()
        : Optional.of(new LoadSpan(loads.get(0), loads.get(loads.size() - 1)));
  }

  /**
   * Power over load has no maximum inside a straight segment, because its slope keeps its sign
   * there.
   */
  @Override
  public Amperes highestCurrent() {
    return points.stream()
        .map(point -> Current.through(point.load(), point.power()))
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }
}
