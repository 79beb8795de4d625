package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.model.Drill;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds drills whose sign no fault on their machines shows. */
final class SignNeverShown implements Rule {
  private static final Fault FAULT =
      new Fault(
          "sign-never-shown", Severity.ERROR, "no fault shows the sign that a drill begins with");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (!analysis.unit().broken().isEmpty()) {
      return List.of();
    }
    List<FailureSign> signs = analysis.circuits().signs();
    return analysis.unit().drills().stream()
        .filter(drill -> drill.sign().ofMachine())
        .filter(drill -> lampsExist(analysis.unit(), drill))
        .filter(drill -> signs.stream().anyMatch(it -> drill.appliesTo().holds(it.machine())))
        .filter(drill -> signs.stream().noneMatch(it -> it.fitting().contains(drill)))
        .map(SignNeverShown::problem)
        .toList();
  }

  /** A lamp that no machine has is a mistake of its own. */
  private static boolean lampsExist(Unit unit, Drill drill) {
    return drill.sign().lamps().keySet().stream()
        .allMatch(
            lamp ->
                unit.machines().stream()
                    .filter(drill.appliesTo()::holds)
                    .anyMatch(machine -> machine.lamp(lamp).isPresent()));
  }

  private static Problem problem(Drill drill) {
    return FAULT
        .at(
            drill.sign().at(),
            "no single fault on the machines of %s looks and sounds like this"
                .formatted(Wording.quoted(drill)))
        .help("compare tone, lamps and display with the machines' 'answers'");
  }
}
