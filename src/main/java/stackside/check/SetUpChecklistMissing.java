package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Kind;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines in a room for which no set-up checklist holds. */
final class SetUpChecklistMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "set-up-checklist-missing",
          Severity.ERROR,
          "a machine in a room has no set-up checklist");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    return unit.machines().stream()
        .filter(machine -> !unit.roomsWith(machine).isEmpty())
        .filter(
            machine ->
                unit.checklistsFor(machine).stream().noneMatch(SetUpChecklistMissing::isSetUp))
        .map(
            machine ->
                FAULT
                    .at(
                        machine.name().at(),
                        "no set-up checklist is for " + Wording.quoted(machine))
                    .help(
                        "add a checklist of 'kind: set-up', or name the machine under 'for' of one"))
        .toList();
  }

  private static boolean isSetUp(Checklist list) {
    return list.kind().value() == ChecklistKind.SET_UP;
  }
}
