package stackside.render;

/** Whether what is rendered may be used: a draft says so on every page and card. */
public enum Marking {
  DRAFT,
  ISSUED
}
