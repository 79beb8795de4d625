package stackside.derive.signed;

import stackside.model.Checklist;
import stackside.model.ChecklistStep;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Sign;

/** What a signature under a drill or a checklist covers: all that is printed of it. */
final class InstructionFacts {
  private InstructionFacts() {}

  static FactList of(Drill drill) {
    return new FactList()
        .text("name", drill.name())
        .members("sign", of(drill.sign()))
        .ids("for", drill.appliesTo().machines())
        .text("make-safe", drill.makeSafe())
        .list("checks", drill.checks().stream().map(InstructionFacts::of).toList())
        .text("never", drill.never())
        .flag("escalate", drill.escalate())
        .flag("on-card", drill.onCard());
  }

  private static FactList of(Sign sign) {
    FactList facts =
        new FactList()
            .text("display", sign.display())
            .text("tissue", sign.tissue())
            .members("lamps", MachineFacts.lamps(sign.lamps()));
    sign.tone().ifPresent(tone -> facts.word("tone", tone));
    return facts;
  }

  private static Json.Members of(DrillCheck check) {
    return new FactList()
        .text("do", check.action())
        .text("see", check.see())
        .words("mends", check.mends())
        .quantity("takes", check.takes())
        .number("was-the-cause", check.wasTheCause())
        .ids("needs", check.needs())
        .list("after", check.after().stream().map(each -> Json.number(each.value())).toList())
        .json();
  }

  static FactList of(Checklist checklist) {
    return new FactList()
        .text("name", checklist.name())
        .word("kind", checklist.kind())
        .ids("for", checklist.appliesTo().machines())
        .list("steps", checklist.steps().stream().map(InstructionFacts::of).toList());
  }

  private static Json.Members of(ChecklistStep step) {
    return new FactList()
        .text("do", step.action())
        .text("see", step.see())
        .words("guards", step.guards())
        .json();
  }
}
