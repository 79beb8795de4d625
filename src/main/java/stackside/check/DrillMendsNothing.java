package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds drills for a sign of the machine in which no check mends anything. */
final class DrillMendsNothing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "drill-mends-nothing",
          Severity.ERROR,
          "a drill for a machine's sign has no check that mends a fault");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().drills().stream()
        .filter(drill -> drill.sign().ofMachine())
        .filter(drill -> drill.checks().stream().allMatch(check -> check.mends().isEmpty()))
        .map(
            drill ->
                FAULT
                    .at(
                        drill.name().at(),
                        "no check of %s mends anything".formatted(Wording.quoted(drill)))
                    .help("say with 'mends' which fault each check finds and mends"))
        .toList();
  }
}
