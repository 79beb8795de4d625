package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.program.Events;
import stackside.model.Asset;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds assets whose software differs from what the last event on them left behind. */
final class SoftwareAgainstServiceLog implements Rule {
  private static final Fault FAULT =
      new Fault(
          "software-against-service-log",
          Severity.ERROR,
          "an asset's software differs from its last service event");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().assets().stream()
        .flatMap(asset -> problem(asset, Events.of(analysis.unit(), asset)).stream())
        .toList();
  }

  private static Optional<Problem> problem(Asset asset, Events events) {
    return events.all().stream()
        .flatMap(event -> event.softwareAfter().stream())
        .reduce((earlier, later) -> later)
        .filter(after -> !after.value().equals(asset.software().value()))
        .map(
            after ->
                FAULT
                    .at(
                        asset.software().at(),
                        "%s is listed with software %s, and its last service event left %s on it"
                            .formatted(asset.id().slug(), asset.software().value(), after.value()))
                    .note(after.at(), "the service event")
                    .help("look at the machine itself, then correct the one that is wrong"));
  }
}
