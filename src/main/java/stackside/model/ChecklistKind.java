package stackside.model;

/** When a checklist is read. */
public enum ChecklistKind implements Word {
  SET_UP,
  TIME_OUT,
  END_OF_CASE
}
