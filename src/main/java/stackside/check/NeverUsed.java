package stackside.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds things that are described and that nothing in the unit uses. */
final class NeverUsed implements Rule {
  private static final Fault FAULT =
      new Fault("never-used", Severity.WARNING, "something is described and nothing uses it");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (!unit.broken().isEmpty()) {
      return List.of();
    }
    Set<ThingId> used = Uses.of(unit);
    return Stream.of(
            unit.instruments(),
            unit.cables(),
            unit.electrodes(),
            unit.footSwitches(),
            unit.sites(),
            unit.siteGroups(),
            unit.steps(),
            unit.lesions(),
            unit.details().patients(),
            unit.details().roles(),
            unit.details().locations(),
            unit.citations(),
            unit.machines())
        .flatMap(List::stream)
        .filter(thing -> !used.contains(thing.id()))
        .map(NeverUsed::problem)
        .toList();
  }

  private static Problem problem(Thing thing) {
    return FAULT
        .at(
            thing.at(),
            "%s '%s' is described here, and nothing uses it"
                .formatted(thing.id().kind().spoken(), thing.id().slug()))
        .help("take it out, or name it where it belongs");
  }
}
