package stackside.model;

/** The colour of a pedal. */
public enum PedalColour implements Word {
  YELLOW,
  BLUE
}
