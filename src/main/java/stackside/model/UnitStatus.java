package stackside.model;

/** Whether the content is for patient care or for demonstration. */
public enum UnitStatus implements Word {
  DEMONSTRATION,
  CLINICAL
}
