package stackside.model;

/** Whether the content is for patients or for show. */
public enum UnitStatus implements Word {
  DEMONSTRATION,
  CLINICAL
}
