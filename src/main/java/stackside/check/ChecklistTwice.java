package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stackside.derive.Analysis;
import stackside.model.Checklist;
import stackside.model.Machine;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines with two checklists for one moment. */
final class ChecklistTwice implements Rule {
  private static final Fault FAULT =
      new Fault(
          "checklist-twice", Severity.ERROR, "a machine has two checklists for the same moment");

  @Override
  public Fault fault() {
    return FAULT;
  }

  /** A checklist that gets in the way of several others is told once. */
  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    Set<ThingId> told = new LinkedHashSet<>();
    List<Problem> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      List<Checklist> lists = unit.checklistsFor(machine);
      for (int i = 1; i < lists.size(); i++) {
        Checklist before = lists.get(i - 1);
        Checklist list = lists.get(i);
        boolean known = told.contains(before.id()) || told.contains(list.id());
        if (list.kind().value() == before.kind().value() && !known) {
          found.add(problem(machine, before, list));
          told.add(before.id());
          told.add(list.id());
        }
      }
    }
    return found;
  }

  private static Problem problem(Machine machine, Checklist before, Checklist list) {
    return FAULT
        .at(
            list.kind().at(),
            "%s has two %s checklists, '%s' and '%s'"
                .formatted(
                    Wording.quoted(machine),
                    list.kind().value().word(),
                    before.id().slug(),
                    list.id().slug()))
        .note(before.kind().at(), "the other one")
        .help("say under 'for' which machines each is for");
  }
}
