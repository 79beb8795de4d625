package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    Map<List<ThingId>, Problem> found = new LinkedHashMap<>();
    for (Machine machine : unit.machines()) {
      List<Checklist> lists = unit.checklistsFor(machine);
      for (int i = 1; i < lists.size(); i++) {
        Checklist before = lists.get(i - 1);
        Checklist list = lists.get(i);
        if (list.kind().value() == before.kind().value()) {
          found.putIfAbsent(List.of(before.id(), list.id()), problem(machine, before, list));
        }
      }
    }
    return List.copyOf(found.values());
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
