package stackside.derive.circuit;

import stackside.model.Checklist;
import stackside.model.ChecklistStep;

/** A set-up step that guards against a fault. */
public record Guard(Checklist checklist, ChecklistStep step) {}
