package stackside.model;

/** How a lesion sits on the wall. */
public enum LesionShape implements Word {
  PEDUNCULATED,
  NON_PEDUNCULATED
}
