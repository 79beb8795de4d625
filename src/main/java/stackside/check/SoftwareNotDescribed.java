package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds assets whose software the description of their machine is not true of. */
final class SoftwareNotDescribed implements Rule {
  private static final Fault FAULT =
      new Fault(
          "software-not-described",
          Severity.ERROR,
          "an asset runs software that its machine's description does not cover");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().assets().stream()
        .filter(asset -> !describes(asset.machine().value(), asset.software().value()))
        .map(SoftwareNotDescribed::problem)
        .toList();
  }

  private static boolean describes(Machine machine, String software) {
    return machine.software().stream().anyMatch(version -> version.value().equals(software));
  }

  private static Problem problem(Asset asset) {
    Machine machine = asset.machine().value();
    Location versions = machine.software().stream().findFirst().map(Fact::at).orElse(machine.at());
    return FAULT
        .at(
            asset.software().at(),
            "%s runs software %s, and the description of %s is true of %s"
                .formatted(
                    asset.id().slug(),
                    asset.software().value(),
                    Wording.quoted(machine),
                    Wording.list(machine.software().stream().map(Fact::value).toList())))
        .note(versions, "the versions that the description is true of")
        .help("correct the version, or check the description against the new software and add it");
  }
}
