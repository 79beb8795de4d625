package stackside.model;

/** How a socket is selected. */
public enum SelectionKind implements Word {
  BY_PROGRAM,
  BY_BUTTON,
  BY_PLUGGING_IN,
  BY_FOOT_SWITCH,
  FIXED
}
