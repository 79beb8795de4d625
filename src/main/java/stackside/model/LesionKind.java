package stackside.model;

/** What a lesion or task is, where it matters for the answer. */
public enum LesionKind implements Word {
  ADENOMA,
  SERRATED,
  VASCULAR,
  SCAR,
  ULCER,
  STRICTURE,
  PAPILLA
}
