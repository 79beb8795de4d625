package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.OutputPoint;
import stackside.model.PublishedOutput;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds published points of output that do not fit their own mode. */
final class PublishedPointImpossible implements Rule {
  private static final Fault FAULT =
      new Fault(
          "published-point-impossible",
          Severity.ERROR,
          "a published point of output does not fit its mode");

  /** Published diagrams round, so a point may stand a little above its limit. */
  private static final double ROUNDING = 1.02;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      for (Mode mode : machine.modes()) {
        mode.published().stream()
            .flatMap(published -> check(machine, mode, published).stream().limit(1))
            .forEach(found::add);
      }
    }
    return found;
  }

  private static List<Problem> check(Machine machine, Mode mode, PublishedOutput published) {
    List<Problem> found = new ArrayList<>();
    Optional<Fact<OutputPoint>> before = Optional.empty();
    for (Fact<OutputPoint> point : published.points()) {
      fault(machine, published, before, point.value())
          .map(words -> FAULT.at(point.at(), Wording.quoted(mode) + ": " + words))
          .map(
              problem ->
                  outside(machine, point.value())
                      ? problem.note(machine.loadRange().at(), "the load range")
                      : problem)
          .map(problem -> problem.help("compare with the manufacturer's diagram"))
          .ifPresent(found::add);
      before = Optional.of(point);
    }
    return found;
  }

  private static Optional<String> fault(
      Machine machine,
      PublishedOutput published,
      Optional<Fact<OutputPoint>> before,
      OutputPoint point) {
    if (outside(machine, point)) {
      return Optional.of(
          "a point at %s lies outside the machine's load range, %s"
              .formatted(point.load(), machine.loadRange().value().text()));
    }
    if (before.isPresent() && point.load().compareTo(before.orElseThrow().value().load()) <= 0) {
      return Optional.of(
          "the point at %s stands behind the one at %s, and loads must rise"
              .formatted(point.load(), before.orElseThrow().value().load()));
    }
    return published
        .limit()
        .map(Fact::value)
        .filter(limit -> point.power().value() > limit.value() * ROUNDING)
        .map(
            limit ->
                "%s at %s is more than the limit, %s"
                    .formatted(point.power(), point.load(), limit));
  }

  private static boolean outside(Machine machine, OutputPoint point) {
    return !machine.loadRange().value().holds(point.load());
  }
}
