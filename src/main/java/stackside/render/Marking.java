package stackside.render;

/** Whether the output may be used. A draft says on every page and card that it is one. */
public enum Marking {
  DRAFT,
  ISSUED
}
