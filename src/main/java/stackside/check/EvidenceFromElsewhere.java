package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Asset;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Response;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds observations of a machine's answer made on another model or another software. */
final class EvidenceFromElsewhere implements Rule {
  private static final Fault FAULT =
      new Fault(
          "evidence-from-elsewhere",
          Severity.ERROR,
          "a machine's answer was observed on another machine or software");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      for (Response answer : machine.answers().values()) {
        answer
            .evidence()
            .value()
            .observation()
            .flatMap(it -> problem(analysis.unit(), machine, it))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<Problem> problem(
      Unit unit, Machine machine, Evidence.Observation observation) {
    Optional<Asset> asset =
        unit.assets().stream()
            .filter(it -> it.id().equals(observation.asset().value()))
            .findFirst();
    if (asset.isPresent() && !asset.orElseThrow().machine().value().id().equals(machine.id())) {
      return Optional.of(
          FAULT
              .at(
                  observation.asset().at(),
                  "%s is no %s but a %s"
                      .formatted(
                          observation.asset().value().slug(),
                          Wording.quoted(machine),
                          Wording.quoted(asset.orElseThrow().machine().value())))
              .note(asset.orElseThrow().machine().at(), "where the asset's machine stands")
              .help("write the number of the generator that was looked at"));
    }
    String software = observation.software().value();
    if (machine.software().stream().noneMatch(it -> it.value().equals(software))) {
      return Optional.of(
          FAULT
              .at(
                  observation.software().at(),
                  "this was observed with software %s, and the description is true of %s"
                      .formatted(
                          software,
                          Wording.list(machine.software().stream().map(Fact::value).toList())))
              .help("look again with the software in use, or correct the version"));
    }
    return Optional.empty();
  }
}
