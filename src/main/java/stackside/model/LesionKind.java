package stackside.model;

/** The kind of lesion or task, where it matters for the answer. */
public enum LesionKind implements Word {
  ADENOMA,
  SERRATED,
  VASCULAR,
  SCAR,
  ULCER,
  STRICTURE,
  PAPILLA
}
