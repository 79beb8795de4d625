package stackside.model;

/** How a part of a front panel looks that the machine's answer to a condition leaves out. */
public enum Unsaid implements Word {
  DARK,
  NOT_KNOWN
}
