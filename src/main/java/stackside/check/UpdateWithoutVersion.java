package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.ServiceEventKind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds software updates in the service log that do not name the software after them. */
final class UpdateWithoutVersion implements Rule {
  private static final Fault FAULT =
      new Fault(
          "update-without-version",
          Severity.ERROR,
          "a software update does not say to which version");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().serviceEvents().stream()
        .filter(event -> event.event().value() == ServiceEventKind.SOFTWARE_UPDATE)
        .filter(event -> event.softwareAfter().isEmpty())
        .map(
            event ->
                FAULT
                    .at(
                        event.event().at(),
                        "the software of %s was updated on %s, and to which version is not said"
                            .formatted(Wording.quoted(event.asset().value()), event.date().value()))
                    .help("write the version under 'software-after'"))
        .toList();
  }
}
